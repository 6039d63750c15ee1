using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Ingest;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit analyze</c>: the whole analysis on the console, and as CSV and JSON when asked.</summary>
internal static class AnalyzeCommand
{
    public static Command Create(Terminal terminal)
    {
        var folder = TrialFolder.Argument();
        var output = new Option<string?>("--output", "-o") { Description = "Also write a CSV file per table and analysis.json into this folder.", HelpName = "DIR" };
        var quiet = CommonOptions.Quiet();
        var command = new Command("analyze", "Analyse a trial: what each strip came to, how the treatments compare, and what to doubt.")
        {
            folder,
            output,
            quiet,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), parsed.GetValue(output), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int Run(string folder, string? output, bool quiet, Terminal terminal)
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
