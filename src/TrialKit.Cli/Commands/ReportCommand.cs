using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit report</c>: the trial as a PDF.</summary>
internal static class ReportCommand
{
    public static Command Create(Terminal terminal)
    {
        var folder = TrialFolder.Argument();
        var output = new Option<string>("--output", "-o") { Description = "The PDF file to write.", HelpName = "FILE.pdf", Required = true };
        var paper = CommonOptions.Paper();
        var quiet = CommonOptions.Quiet();
        var command = new Command("report", "Write the report of a trial as a PDF: the answer first, then figures, tables, doubts and methods.")
        {
            folder,
            output,
            paper,
            quiet,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), parsed.GetRequiredValue(output), parsed.GetValue(paper), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int Run(string folder, string output, string? paper, bool quiet, Terminal terminal)
    {
        if (!output.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
        {
            throw new UsageException($"'{output}' is no name of a PDF file; a name that ends in .pdf was expected.");
        }

        var reading = TrialFolder.Read(folder, terminal, eachWarning: false);
        if (TrialFolder.ToAnalyse(reading, terminal) is not { } trial)
        {
            return ExitCode.DataErrors;
        }

        terminal.Step($"Analysing {folder}");
        var analysis = TrialAnalysis.Of(trial);
        terminal.Step($"Writing {output}");
        var settings = new ReportSettings(
            CommonOptions.PaperOf(paper, trial.Units),
            TrialFolder.Inputs(reading),
            [.. reading.Warnings.Select(warning => warning.ToString())]);
        var bytes = PdfReport.Render(TrialReport.Of(analysis, settings));
        WholeFile.Write(output, stream => stream.Write(bytes));
        if (!quiet)
        {
            terminal.Out.WriteLine($"Wrote {output}");
        }

        return ExitCode.Done;
    }
}
