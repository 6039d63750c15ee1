using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Ingest;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;
using TrialKit.Trials;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit report</c>: the trial as a PDF or as an HTML file.</summary>
internal static class ReportCommand
{
    public static Command Create(Terminal terminal)
    {
        var folder = TrialFolder.Argument();
        var output = new Option<string>("--output", "-o") { Description = "The file to write; its ending, .pdf or .html, says what it becomes.", HelpName = "FILE", Required = true };
        var paper = CommonOptions.Paper();
        var quiet = CommonOptions.Quiet();
        var command = new Command("report", "Write the report of a trial as a PDF or as one HTML file: the answer first, then figures, tables, doubts and methods.")
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
        var render = Renderer(output);
        var reading = TrialFolder.Read(folder, terminal, eachWarning: false);
        if (TrialFolder.ToAnalyse(reading, terminal) is not { } trial)
        {
            return ExitCode.DataErrors;
        }

        terminal.Step($"Analysing {folder}");
        var analysis = TrialAnalysis.Of(trial);
        terminal.Step($"Writing {output}");
        var document = TrialReport.Of(analysis, Settings(reading, trial, paper));
        var bytes = render(document);
        WholeFile.Write(output, stream => stream.Write(bytes));
        if (!quiet)
        {
            foreach (var finding in PrintFindings.Of(analysis))
            {
                terminal.WriteWrapped($"note: {finding.Message}", indent: 0);
            }

            terminal.Out.WriteLine($"Wrote {output}");
        }

        return ExitCode.Done;
    }

    /// <summary>The sheet, the files and the warnings of a report.</summary>
    /// <param name="reading">What was read.</param>
    /// <param name="trial">The trial in it.</param>
    /// <param name="paper">The sheet that was asked for; null for the one that goes with the trial's units.</param>
    public static ReportSettings Settings(TrialReading reading, StripTrial trial, string? paper) => new(
        CommonOptions.PaperOf(paper, trial.Units),
        TrialFolder.Inputs(reading),
        [.. reading.Warnings.Select(warning => warning.ToString())]);

    private static Func<ReportDocument, byte[]> Renderer(string output) => Path.GetExtension(output).ToUpperInvariant() switch
    {
        ".PDF" => document => PdfReport.Render(document),
        ".HTML" or ".HTM" => HtmlReport.Render,
        _ => throw new UsageException($"'{output}' is no name of a PDF or HTML file; a name that ends in .pdf or .html was expected."),
    };
}
