using System.Collections.Concurrent;
using TrialKit.Reporting.Document;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>Tables of critical values as they are printed on a sheet, and the values as a key takes them from there.</summary>
internal static class CriticalTable
{
    /// <summary>The caption of a table of t.</summary>
    public const string TCaption = "Student's t: passed by |t| with this probability when there is no true difference";

    /// <summary>The caption of a table of F.</summary>
    public const string FCaption = "F: passed with this probability when there is no true difference";

    private const int Decimals = 3;
    private static readonly double[] Alphas = [0.20, 0.10, 0.05, 0.02, 0.01];
    private static readonly double[] FAlphas = [0.10, 0.05, 0.01];

    // Quantiles are searched for; a class set asks for the same ones again and again.
    private static readonly ConcurrentDictionary<(int? Effect, int Error, double Alpha), double> Known = new();

    /// <summary>The probabilities at the heads of a table of t, the largest first.</summary>
    public static IReadOnlyList<double> TColumns => Alphas;

    /// <summary>A table of t.</summary>
    /// <param name="degrees">Its rows.</param>
    public static Table OfT(params IEnumerable<int> degrees) => new(
        TCaption,
        [new("df", Alignment: ColumnAlignment.Right), .. Alphas.Select(Head)],
        [.. degrees.Distinct().Select(df => TableRow.Of([NumberText.Count(df), .. Alphas.Select(alpha => T(df, alpha).Text)]))]);

    /// <summary>A table of F.</summary>
    /// <param name="degrees">Its rows: degrees of freedom of the effect and of the error.</param>
    public static Table OfF(params IEnumerable<(int Effect, int Error)> degrees) => new(
        FCaption,
        [new("df of treatments", Alignment: ColumnAlignment.Right), new("df of error", Alignment: ColumnAlignment.Right), .. FAlphas.Select(Head)],
        [.. degrees.Distinct().Select(df => TableRow.Of([NumberText.Count(df.Effect), NumberText.Count(df.Error), .. FAlphas.Select(alpha => F(df.Effect, df.Error, alpha).Text)]))]);

    /// <summary>A value of the table of t.</summary>
    public static Rounded T(int degrees, double alpha) => Rounded.Printed(Known.GetOrAdd((null, degrees, alpha), cell => PrintedTables.T(cell.Error, cell.Alpha)), Decimals);

    /// <summary>A value of the table of F.</summary>
    public static Rounded F(int effect, int error, double alpha) => Rounded.Printed(Known.GetOrAdd((effect, error, alpha), cell => PrintedTables.F(cell.Effect!.Value, cell.Error, cell.Alpha)), Decimals);

    /// <summary>Between which columns of the table of t a value falls.</summary>
    /// <param name="t">The t.</param>
    /// <param name="degrees">The row.</param>
    /// <returns>From the number on paper, and from the one that was not rounded.</returns>
    public static (string Written, string Exact) Bracket(Rounded t, int degrees) => Bracket(t.Size(), Alphas, alpha => T(degrees, alpha));

    /// <summary>Between which columns of the table of F a value falls.</summary>
    /// <param name="f">The F.</param>
    /// <param name="effect">Degrees of freedom of the treatments.</param>
    /// <param name="error">Degrees of freedom of the error.</param>
    /// <returns>From the number on paper, and from the one that was not rounded.</returns>
    public static (string Written, string Exact) Bracket(Rounded f, int effect, int error) => Bracket(f, FAlphas, alpha => F(effect, error, alpha));

    private static (string Written, string Exact) Bracket(Rounded statistic, double[] alphas, Func<double, Rounded> column)
    {
        var columns = alphas.Select(column).ToArray();
        return (Between(columns.Count(value => statistic.Written > value.Written), alphas), Between(columns.Count(value => statistic.Exact > value.Exact), alphas));
    }

    private static string Between(int passed, double[] alphas) => passed switch
    {
        0 => $"above {Alpha(alphas[0])}",
        _ when passed == alphas.Length => $"below {Alpha(alphas[^1])}",
        _ => $"between {Alpha(alphas[passed])} and {Alpha(alphas[passed - 1])}",
    };

    private static TableColumn Head(double alpha) => new(Alpha(alpha), Alignment: ColumnAlignment.Right);

    private static string Alpha(double alpha) => NumberText.Number(alpha, 2);
}
