using System.Globalization;
using TrialKit.Ingest.Messages;

namespace TrialKit.Ingest;

/// <summary>Says once what would be said of nearly every row of a table that is filled in by and by.</summary>
internal static class RepeatedWarnings
{
    // So many are worth their places; more of them say one thing.
    private const int MostListed = 5;

    /// <summary>Folds rows without a value and spots with one visit table by table, and tables without rows into one.</summary>
    public static void Fold(ProblemList problems)
    {
        foreach (var code in new[] { TrialProblems.LeftOutCode, TrialProblems.VisitedTwiceCode })
        {
            problems.Fold(code, problem => problem.Location.File, MostListed, (first, more) => first with
            {
                Found = string.Create(CultureInfo.InvariantCulture, $"{first.Found}, and {more.Count} more like it"),
            });
        }

        problems.Fold(TableProblems.NoRowsCode, _ => string.Empty, mostListed: 1, (first, more) => first with
        {
            Found = $"{first.Found}, and so have {string.Join(", ", more.Select(problem => problem.Location.File))}",
            Expected = "rows were expected as they are measured",
        });
    }
}
