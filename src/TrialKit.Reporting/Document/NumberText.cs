using System.Globalization;

namespace TrialKit.Reporting.Document;

/// <summary>The one place where numbers become words on paper: how many figures, which signs, what stands for nothing.</summary>
/// <remarks>
/// A minus is U+2212, thousands are set off by commas, ranges are written <c>a to b</c>; text is the same under every culture.
/// NaN and infinities are refused: a value that is missing is null and prints as <see cref="NotRecorded"/> or <see cref="Dash"/>.
/// </remarks>
public static class NumberText
{
    /// <summary>In a sentence, what stands for a value that was not recorded.</summary>
    public const string NotRecorded = "not recorded";

    /// <summary>In a table, what stands for a value that was not recorded.</summary>
    public const string Dash = "–";

    private const char Minus = '\u2212';
    private const double StandToldInTens = 2000;
    private const int MostDecimals = 6;
    private const int FullFigures = 7;
    private static readonly string[] Words = ["No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten", "Eleven", "Twelve"];

    /// <summary>A number with so many decimals: <c>−1,234.5</c>. A value that rounds to zero has no sign.</summary>
    public static string Number(double value, int decimals) => Format(value, decimals, plus: false);

    /// <summary>A number that may be missing, for a table.</summary>
    public static string Number(double? value, int decimals) => value is { } number ? Number(number, decimals) : Dash;

    /// <summary>A difference, with its sign: <c>+0.3</c>, <c>−0.3</c>, <c>0.0</c>.</summary>
    public static string Difference(double value, int decimals) => Format(value, decimals, plus: true);

    /// <summary>A whole number: <c>1,234</c>.</summary>
    public static string Count(int value) => Format(value, 0, plus: false);

    /// <summary>A number to so many significant figures: <c>0.012</c>, <c>1.2</c>, <c>120</c>.</summary>
    public static string Figures(double value, int figures)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(figures, 1);
        Refuse(value);
        if (value is 0)
        {
            return "0";
        }

        var place = Place(value, figures);
        return Format(RoundToPlace(value, place), Math.Max(0, -place), plus: false);
    }

    /// <summary>A number to seven figures without idle zeros, for who checks: <c>2.333333</c>, <c>31</c>.</summary>
    public static string Full(double value)
    {
        var text = Figures(value, FullFigures);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    /// <summary>A number among others up to a largest, with so many figures of the largest: <c>65.7</c> beside <c>109.0</c>; in powers of ten where decimals would run long.</summary>
    public static string Fitting(double value, double largest, int figures)
    {
        var decimals = largest > 0 ? Math.Max(0, -Place(largest, figures)) : 0;
        return decimals <= MostDecimals ? Number(value, decimals) : value.ToString("0.##E+0", CultureInfo.InvariantCulture).Replace('-', Minus);
    }

    /// <summary>A stand, in plants per acre or hectare, to the hundred: <c>31,400</c>.</summary>
    public static string Stand(double plants) => Format(RoundToPlace(plants, 2), 0, plus: false);

    /// <summary>A stand that may be missing, for a table.</summary>
    public static string Stand(double? plants) => plants is { } number ? Stand(number) : Dash;

    /// <summary>A difference of two stands, to the ten below two thousand and to the hundred above: <c>+610</c>, <c>−2,200</c>.</summary>
    public static string StandDifference(double plants) =>
        Format(RoundToPlace(plants, Math.Abs(plants) < StandToldInTens ? 1 : 2), 0, plus: true);

    /// <summary>The size of a difference of two stands among differences up to a largest: to the ten below two thousand, else to the hundred.</summary>
    public static string StandAmount(double plants, double largest) =>
        Format(RoundToPlace(Math.Abs(plants), largest < StandToldInTens ? 1 : 2), 0, plus: false);

    /// <summary>A small whole number at the head of a sentence, <c>Six</c>; digits above twelve.</summary>
    public static string CountWord(int value) => value >= 0 && value < Words.Length ? Words[value] : Count(value);

    /// <summary>Days to the tenth: <c>9.4</c>.</summary>
    public static string Days(double days) => Format(days, 1, plus: false);

    /// <summary>Days to the tenth, which may be missing, for a table.</summary>
    public static string Days(double? days) => days is { } number ? Days(number) : Dash;

    /// <summary>A share as a percentage: 0.93 becomes <c>93 %</c>, with a space that does not break.</summary>
    public static string Percent(double share, int decimals = 0) => $"{Format(100 * share, decimals, plus: false)}\u00A0%";

    /// <summary>A level with all its figures: 0.1 becomes <c>10 %</c>, 0.025 <c>2.5 %</c>.</summary>
    public static string Level(double alpha) => string.Create(CultureInfo.InvariantCulture, $"{100 * alpha:0.######}\u00A0%");

    /// <summary>An interval whose ends are written by the rule given: <c>−20 to 1,190</c>.</summary>
    public static string Range(double low, double high, Func<double, string> rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return (double.IsNegativeInfinity(low), double.IsPositiveInfinity(high)) switch
        {
            (true, true) => "no limit",
            (true, false) => $"{rule(high)} or less",
            (false, true) => $"{rule(low)} or more",
            _ => $"{rule(low)} to {rule(high)}",
        };
    }

    /// <summary>A probability as evidence is quoted: <c>p = .028</c>, <c>p &lt; .001</c>, <c>p &gt; .99</c>.</summary>
    public static string P(double p)
    {
        Check(p);
        return PValue(p) is var text && text[0] is '<' or '>' ? $"p\u00A0{text}" : $"p\u00A0=\u00A0{text}";
    }

    /// <summary>A probability for a table: <c>.028</c>, <c>&lt; .001</c>; two figures, no zero before the point.</summary>
    public static string PValue(double p)
    {
        Check(p);
        if (p < 0.001)
        {
            return "<\u00A0.001";
        }

        if (p > 0.99)
        {
            return ">\u00A0.99";
        }

        var place = Place(p, 2);
        return p.ToString(string.Create(CultureInfo.InvariantCulture, $"F{-place}"), CultureInfo.InvariantCulture)[1..];
    }

    /// <summary>A probability that may be missing, for a table.</summary>
    public static string PValue(double? p) => p is { } number ? PValue(number) : Dash;

    /// <summary>A date in a sentence: <c>May 4, 2026</c>.</summary>
    public static string Date(DateOnly date) => date.ToString("MMMM d, yyyy", CultureInfo.InvariantCulture);

    /// <summary>A date where room is short: <c>May 4</c>.</summary>
    public static string ShortDate(DateOnly date) => date.ToString("MMM d", CultureInfo.InvariantCulture);

    private static string Format(double value, int decimals, bool plus)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        Refuse(value);
        var digits = Math.Abs(value).ToString(string.Create(CultureInfo.InvariantCulture, $"N{decimals}"), CultureInfo.InvariantCulture);
        if (!digits.AsSpan().ContainsAnyInRange('1', '9'))
        {
            return digits;
        }

        return value < 0 ? Minus + digits : plus ? "+" + digits : digits;
    }

    // The power of ten of the last figure kept, after rounding: 0.0996 to two figures ends at the hundredth.
    private static int Place(double value, int figures)
    {
        var magnitude = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        var place = magnitude - figures + 1;
        return Math.Abs(RoundToPlace(value, place)) >= Math.Pow(10, magnitude + 1) ? place + 1 : place;
    }

    private static double RoundToPlace(double value, int place)
    {
        Refuse(value);
        var unit = Math.Pow(10, Math.Abs(place));
        return place >= 0
            ? Math.Round(value / unit, MidpointRounding.AwayFromZero) * unit
            : Math.Round(value * unit, MidpointRounding.AwayFromZero) / unit;
    }

    private static void Check(double p)
    {
        if (p is not (>= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(p), p, "A probability lies between 0 and 1.");
        }
    }

    private static void Refuse(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A number to print is finite.");
        }
    }
}
