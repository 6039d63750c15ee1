using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Batch;
using TrialKit.Cli.Output;
using TrialKit.Ingest;
using TrialKit.Season;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit collect</c>: the comparisons and strip values of many trials in two tables.</summary>
internal static class CollectCommand
{
    public static Command Create(Terminal terminal)
    {
        var folders = TrialFolder.Arguments();
        var output = new Option<string>("--output", "-o") { Description = "The file for the comparisons, .parquet or .csv; the values of strips go beside it, into season-strips.parquet where this is season.parquet.", HelpName = "FILE", Required = true };
        var quiet = CommonOptions.Quiet();
        var command = new Command("collect", "Analyse many trials and put their results into two tables: a row for each comparison on each measure, and a row for each strip and measure.")
        {
            folders,
            output,
            quiet,
        };
        command.SetAction(parsed => Run(TrialFolders.Of(parsed.GetRequiredValue(folders)).ByPath(), parsed.GetRequiredValue(output), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int Run(TrialFolders folders, string output, bool quiet, Terminal terminal)
    {
        var begin = Form(output);
        TrialFolder.KeepTrials(Path.GetDirectoryName(Path.GetFullPath(output))!);
        var strips = SeasonReader.StripsOf(output);
        var lines = WriteBoth(folders, output, strips, begin, terminal);
        if (!quiet)
        {
            BatchSummary.Print(lines, folders.PassedOver, terminal);
            terminal.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Wrote {output} and {strips}, {lines.Count(line => line.Status == BatchStatus.Analysed)} of {lines.Count} trials in them."));
        }

        return BatchSummary.ExitCodeOf(lines);
    }

    // Both files appear together, after all trials, or none does.
    private static IReadOnlyList<BatchLine> WriteBoth(TrialFolders folders, string output, string strips, Func<Stream, Stream, SeasonWriter> begin, Terminal terminal)
    {
        IReadOnlyList<BatchLine> lines = [];
        WholeFile.Write(output, contrastStream => WholeFile.Write(strips, stripStream =>
        {
            using var season = begin(contrastStream, stripStream);
            var trialOf = new Dictionary<string, string>(StringComparer.Ordinal);
            lines = BatchRun.Run(
                folders.Trials,
                (trial, reading, analysis) => new SeasonTrial(trial.Name, analysis, InputFile.Fingerprint(InputFile.Of(reading).Select(file => (file.Name, file.Sha256)))),
                (trial, analysed) =>
                {
                    if (!trialOf.TryAdd(analysed.Fingerprint, trial.Folder))
                    {
                        terminal.Error.WriteLine($"{trial.Folder}: its files are those of {trialOf[analysed.Fingerprint]}; a trial that is in twice counts double.");
                    }

                    season.Add(analysed);
                },
                terminal);
            season.Complete();
        }));
        return lines;
    }

    private static Func<Stream, Stream, SeasonWriter> Form(string output) => Path.GetExtension(output).ToUpperInvariant() switch
    {
        ".PARQUET" => SeasonWriter.Parquet,
        ".CSV" => SeasonWriter.Csv,
        _ => throw new UsageException($"'{output}' is no name of a Parquet or CSV file; a name that ends in .parquet or .csv was expected."),
    };
}
