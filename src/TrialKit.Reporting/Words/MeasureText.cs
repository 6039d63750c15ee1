using TrialKit.Reporting.Document;
using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>A measure's values and differences in a table, rounded by what sort of number they are.</summary>
public static class MeasureText
{
    // Stands and seeds up in percent of the seeds dropped may pass 100, and so may a coefficient of variation.
    private static readonly HashSet<string> PartsOfAWhole = new(StringComparer.Ordinal)
    {
        "up-24h", "up-48h", "late-3d", "stage-behind", "spacing-multiples", "spacing-single", "spacing-missed", "depth-near",
    };

    /// <summary>The measure's name with its unit: <c>Stand, plants/ac</c>.</summary>
    public static string Name(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Unit.Symbol.Length == 0 ? measure.Label : $"{measure.Label}, {measure.Unit}";
    }

    /// <summary>The measure's unit as a word that is read aloud: <c>days</c>; empty for a plain number.</summary>
    internal static string UnitWord(Measure measure) => measure.Kind switch
    {
        MeasureKind.Time => "days",
        MeasureKind.Stand => measure.Unit == Unit.PlantsPerAcre ? "plants an acre" : "plants a hectare",
        MeasureKind.Yield => measure.Unit == Unit.BushelsPerAcre ? "bushels an acre" : "tonnes a hectare",
        _ => measure.Unit.Symbol,
    };

    /// <summary>A value, a dash where there is none.</summary>
    public static string Value(Measure measure, double? value) => value is not { } number
        ? NumberText.Dash
        : measure.Kind switch
        {
            MeasureKind.Stand => NumberText.Stand(number),
            MeasureKind.Other => NumberText.Figures(number, 4),
            _ => NumberText.Number(number, Decimals(measure)),
        };

    /// <summary>A difference with its sign, one figure finer than a value.</summary>
    public static string Difference(Measure measure, double value) => measure.Kind switch
    {
        MeasureKind.Stand => NumberText.StandDifference(value),
        MeasureKind.Other => (value > 0 ? "+" : "") + NumberText.Figures(value, 3),
        MeasureKind.Time => NumberText.Difference(value, Decimals(measure) + 1),
        _ => NumberText.Difference(value, Decimals(measure)),
    };

    /// <summary>An interval of differences.</summary>
    public static string Interval(Measure measure, Interval interval) =>
        NumberText.Range(interval.Low, interval.High, value => Difference(measure, value));

    /// <summary>The most that two values of the measure can differ by; infinite where there is no such limit.</summary>
    /// <remarks>An interval by Student's t knows nothing of it: where strips are few and apart it may reach beyond.</remarks>
    internal static double Most(Measure measure) => PartsOfAWhole.Contains(measure.Id) ? 100 : double.PositiveInfinity;

    private static int Decimals(Measure measure) => measure.Kind switch
    {
        MeasureKind.Length when measure.Unit == Unit.Inches => 2,
        MeasureKind.Yield when measure.Unit == Unit.TonnesPerHectare => 2,
        _ => 1,
    };
}
