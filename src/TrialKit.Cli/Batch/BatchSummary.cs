using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Export;

namespace TrialKit.Cli.Batch;

/// <summary>What many trials came to: a line each, and the exit code of all.</summary>
internal static class BatchSummary
{
    /// <summary>The exit code: that of the worst trial.</summary>
    public static int ExitCodeOf(IEnumerable<BatchLine> lines) => lines.Select(line => line.Status).DefaultIfEmpty().Max() switch
    {
        BatchStatus.Analysed => ExitCode.Done,
        BatchStatus.Failed => ExitCode.Failure,
        _ => ExitCode.DataErrors,
    };

    /// <summary>Prints the table and the count.</summary>
    public static void Print(IReadOnlyList<BatchLine> lines, IReadOnlyList<string> passedOver, Terminal terminal)
    {
        ConsoleTable.Print(
            terminal,
            "Trials",
            [new("Trial"), new("Shown", IsNumber: true), new("Not shown", IsNumber: true), new("Equivalent", IsNumber: true), new("Doubts", IsNumber: true), new("Warnings", IsNumber: true), new("Errors", IsNumber: true)],
            lines.Select(line => line.Status switch
            {
                BatchStatus.Analysed => (string[])[line.Trial.Name, Count(line.Shown), Count(line.NotShown), Count(line.Equivalent), Count(line.Doubts), Count(line.Warnings), Count(line.Errors)],
                BatchStatus.Plan => [$"{line.Trial.Name} (a plan)", "", "", "", "", Count(line.Warnings), Count(line.Errors)],
                BatchStatus.DataErrors => [line.Trial.Name, "", "", "", "", Count(line.Warnings), Count(line.Errors)],
                _ => [$"{line.Trial.Name} (failed)", "", "", "", "", "", ""],
            }));
        terminal.WriteWrapped("Shown and not shown count the comparisons of each trial that the first page of its report speaks of, each at the trial's own level: among many trials some are shown by chance alone. 'trialkit check FOLDER' lists the warnings of one.", indent: 0);
        if (passedOver.Count > 0)
        {
            terminal.WriteWrapped($"Passed over, without a trial.toml: {string.Join(", ", passedOver)}.", indent: 0);
        }

        terminal.WriteWrapped(Closing(lines), indent: 0);
    }

    /// <summary>The lines as a table for programs.</summary>
    public static ResultTable Table(IReadOnlyList<BatchLine> lines) => new(
        "trials",
        "one trial of a batch",
        [
            new("trial", "its name in outputs"),
            new("folder", "where it lies, as named"),
            new("status", "analysed, plan, errors or failed"),
            new("title", "its title"),
            new("shown", "headline comparisons shown"),
            new("not_shown", "headline comparisons not shown"),
            new("equivalent", "headline comparisons within a margin set beforehand"),
            new("not_judged", "headline comparisons without a test"),
            new("doubts", "cautions and serious doubts"),
            new("warnings", "warnings of the reading"),
            new("errors", "errors of the reading"),
        ],
        [.. lines.Select(line => (System.Collections.Immutable.ImmutableArray<object?>)
        [
            line.Trial.Name, line.Trial.Folder, Status(line.Status), line.Title,
            line.Shown, line.NotShown, line.Equivalent, line.NotJudged, line.Doubts, line.Warnings, line.Errors,
        ])]);

    private static string Closing(IReadOnlyList<BatchLine> lines)
    {
        var parts = lines.CountBy(line => line.Status).OrderBy(part => part.Key).Select(part => part.Key switch
        {
            BatchStatus.Analysed => $"{Count(part.Value)} analysed",
            BatchStatus.Plan => $"{Count(part.Value)} not measured yet",
            BatchStatus.DataErrors => $"{Count(part.Value)} with errors, listed on standard error",
            _ => $"{Count(part.Value)} on which the program failed",
        });
        return $"{Count(lines.Count)} {(lines.Count == 1 ? "trial" : "trials")}: {string.Join(", ", parts)}.";
    }

    private static string Status(BatchStatus status) => status switch
    {
        BatchStatus.Analysed => "analysed",
        BatchStatus.Plan => "plan",
        BatchStatus.DataErrors => "errors",
        _ => "failed",
    };

    private static string Count(int value) => value.ToString(CultureInfo.InvariantCulture);
}
