using System.CommandLine;
using TrialKit.Cli.Batch;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Ingest;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit analyze</c>: the whole analysis on the console, and as CSV and JSON when asked; of many trials a summary.</summary>
internal static class AnalyzeCommand
{
    private const string Summary = "trials.csv";

    public static Command Create(Terminal terminal)
    {
        var folders = TrialFolder.Arguments();
        var output = new Option<string?>("--output", "-o") { Description = "Also write a CSV file per table and analysis.json into this folder; of several trials each into a folder of its name in there, and trials.csv.", HelpName = "DIR" };
        var quiet = CommonOptions.Quiet();
        var command = new Command("analyze", "Analyse a trial: what each strip came to, how the treatments compare, and what to doubt. Of several trials, a line for each.")
        {
            folders,
            output,
            quiet,
        };
        command.SetAction(parsed => parsed.GetRequiredValue(folders) is var named && TrialFolders.IsOne(named)
            ? One(named[0], parsed.GetValue(output), parsed.GetValue(quiet), terminal)
            : Many(TrialFolders.Of(named).ByPath(), parsed.GetValue(output), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int One(string folder, string? output, bool quiet, Terminal terminal)
    {
        if (output is not null)
        {
            TrialFolder.KeepTrials(output);
        }

        var reading = TrialFolder.Read(folder, terminal, eachWarning: false);
        if (TrialFolder.ToAnalyse(reading, terminal) is not { } trial)
        {
            return ExitCode.DataErrors;
        }

        terminal.Step($"Analysing {folder}");
        var analysis = TrialAnalysis.Of(trial);
        if (!quiet)
        {
            AnalysisPrinter.Print(analysis, terminal);
        }

        if (output is not null)
        {
            terminal.Step($"Writing {output}");
            Write(analysis, reading, output);
            if (!quiet)
            {
                terminal.Out.WriteLine($"Tables and analysis.json are in {output}.");
                terminal.Out.WriteLine(Next(folder));
            }
        }
        else if (!quiet)
        {
            terminal.Out.WriteLine(Next(folder));
        }

        return ExitCode.Done;
    }

    private static int Many(TrialFolders folders, string? output, bool quiet, Terminal terminal)
    {
        if (output is not null)
        {
            TrialFolder.KeepTrials([output, .. folders.Trials.Select(trial => Path.Combine(output, trial.Name))]);
        }

        var lines = BatchRun.Run(
            folders.Trials,
            (trial, reading, analysis) =>
            {
                if (output is not null)
                {
                    Write(analysis, reading, Path.Combine(output, trial.Name));
                }

                return true;
            },
            (_, _) => { },
            terminal);
        if (!quiet)
        {
            BatchSummary.Print(lines, folders.PassedOver, terminal);
        }

        if (output is not null)
        {
            WholeFile.Write(Path.Combine(output, Summary), stream => CsvTables.Write(BatchSummary.Table(lines), stream));
            if (!quiet)
            {
                terminal.Out.WriteLine($"Tables of each trial and {Summary} are in {output}.");
            }
        }

        return BatchSummary.ExitCodeOf(lines);
    }

    private static string Next(string folder) => $"For a page to hand on: trialkit report {folder} --output FILE.pdf";

    private static void Write(TrialAnalysis analysis, TrialReading reading, string output)
    {
        var inputs = InputFile.Of(reading).Select(file => (file.Name, file.Sha256));
        var json = Task.Run(() => WholeFile.Write(Path.Combine(output, "analysis.json"), stream => JsonResult.Write(analysis, inputs, stream)));
        try
        {
            TrialFolder.WriteTables(ResultTables.Of(analysis), output);
        }
        finally
        {
            json.GetAwaiter().GetResult();
        }
    }
}
