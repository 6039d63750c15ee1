using TrialKit.Reporting.Sheets.Teaching;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>How the derivations of this project calculate: with a pencil, rounding and carrying on, or without rounding.</summary>
internal sealed class Hand
{
    /// <summary>Rounds where the sheet says so and takes critical values from the sheet's table.</summary>
    public static readonly Hand Pencil = new(rounds: true);

    /// <summary>Never rounds and takes critical values from the distributions.</summary>
    public static readonly Hand Full = new(rounds: false);

    private readonly bool rounds;

    private Hand(bool rounds) => this.rounds = rounds;

    /// <summary>A number as it is written down, a half away from zero.</summary>
    public decimal Round(decimal value, int decimals) => rounds ? decimal.Round(value, decimals, MidpointRounding.AwayFromZero) : value;

    /// <summary>A root as it is written down.</summary>
    public decimal Root(decimal value, int decimals) => Round((decimal)Math.Sqrt((double)value), decimals);

    /// <summary>A value of the sheet's table of t, or of the distribution.</summary>
    public decimal T(SheetText sheet, int degrees, decimal alpha) => rounds
        ? Looked(sheet.Table(CriticalTable.TCaption), 1, ["0.20", "0.10", "0.05", "0.02", "0.01"], alpha, degrees)
        : (decimal)Textbook.T(degrees, (double)alpha);

    /// <summary>A value of t as a table of the sheet prints it, or that of the distribution.</summary>
    public decimal Looked(decimal printed, int degrees, double alpha) => rounds ? printed : (decimal)Textbook.T(degrees, alpha);

    /// <summary>The lower tail of a t of 0 or more as a table of the sheet prints it, or that of the distribution.</summary>
    public decimal Tail(decimal t, int degrees, Func<decimal, decimal> printed) => rounds ? printed(t) : 1 - ((decimal)Textbook.UpperTail((double)(t * t), 1, degrees) / 2);

    /// <summary>A value of the sheet's table of F, or of the distribution.</summary>
    public decimal F(SheetText sheet, int effect, int error, decimal alpha) => rounds
        ? Looked(sheet.Table(CriticalTable.FCaption), 2, ["0.10", "0.05", "0.01"], alpha, effect, error)
        : (decimal)Textbook.F(effect, error, (double)alpha);

    /// <summary>Between which probabilities of the table of t a value falls.</summary>
    public string Bracket(SheetText sheet, decimal t, int degrees) => Bracket(Math.Abs(t), [0.20m, 0.10m, 0.05m, 0.02m, 0.01m], alpha => T(sheet, degrees, alpha));

    /// <summary>Between which probabilities of the table of F a value falls.</summary>
    public string BracketF(SheetText sheet, decimal f, int effect, int error) => Bracket(f, [0.10m, 0.05m, 0.01m], alpha => F(sheet, effect, error, alpha));

    private static string Bracket(decimal value, decimal[] alphas, Func<decimal, decimal> critical)
    {
        var passed = alphas.Where(alpha => value > critical(alpha)).ToArray();
        return passed.Length == 0 ? FormattableString.Invariant($"above {alphas[0]:0.00}")
            : passed.Length == alphas.Length ? FormattableString.Invariant($"below {alphas[^1]:0.00}")
            : FormattableString.Invariant($"between {alphas[passed.Length]:0.00} and {passed[^1]:0.00}");
    }

    private static decimal Looked(IReadOnlyList<string[]> table, int first, string[] alphas, decimal alpha, params int[] degrees)
    {
        var row = table.Single(row => degrees.Select((df, i) => SheetText.Number(row[i]) == df).All(isSame => isSame));
        return SheetText.Number(row[first + Array.FindIndex(alphas, each => SheetText.Number(each) == alpha)]);
    }
}
