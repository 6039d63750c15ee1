using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Ingest;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit report</c>: the trial as a PDF.</summary>
internal static class ReportCommand
{
    private const string Letter = "letter";
    private const string A4 = "a4";

    public static Command Create(Terminal terminal)
    {
        var folder = TrialFolder.Argument();
        var output = new Option<string>("--output", "-o") { Description = "The PDF file to write.", HelpName = "FILE.pdf", Required = true };
        var paper = new Option<string>("--paper") { Description = "The sheet: letter or a4; by the trial's units when not given.", HelpName = "SIZE" };
        paper.AcceptOnlyFromAmong(Letter, A4);
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
        if (reading.Trial is not { } trial)
        {
            return ExitCode.DataErrors;
        }

        terminal.Step($"Analysing {folder}");
        var analysis = TrialAnalysis.Of(trial);
        terminal.Step($"Writing {output}");
        var size = paper switch
        {
            Letter => PageSize.Letter,
            A4 => PageSize.A4,
            _ => trial.Units == Quantities.UnitSystem.Us ? PageSize.Letter : PageSize.A4,
        };
        var settings = new ReportSettings(
            size,
            [.. InputFile.Of(reading).Select(file => new ReportInput(file.Name, file.Sha256, file.Rows))],
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
