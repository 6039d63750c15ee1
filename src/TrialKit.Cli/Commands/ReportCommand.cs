using System.CommandLine;
using TrialKit.Cli.Batch;
using TrialKit.Cli.Output;
using TrialKit.Ingest;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;
using TrialKit.Trials;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit report</c>: the trial as a PDF or as an HTML file; of many trials a file each.</summary>
internal static class ReportCommand
{
    private const string Pdf = "pdf";
    private const string Html = "html";

    public static Command Create(Terminal terminal)
    {
        var folders = TrialFolder.Arguments();
        var output = new Option<string>("--output", "-o") { Description = "The file to write; its ending, .pdf or .html, says what it becomes. Of several trials, the folder for their files.", HelpName = "FILE|DIR", Required = true };
        var form = new Option<string?>("--as") { Description = "Of several trials, what each becomes: pdf, or html. PDF when not given.", HelpName = "FORM" };
        form.AcceptOnlyFromAmong(Pdf, Html);
        var paper = CommonOptions.Paper();
        var quiet = CommonOptions.Quiet();
        var command = new Command("report", "Write the report of a trial as a PDF or as one HTML file: the answer first, then figures, tables, doubts and methods. Of several trials, a file for each.")
        {
            folders,
            output,
            form,
            paper,
            quiet,
        };
        command.SetAction(parsed => parsed.GetRequiredValue(folders) is var named && TrialFolders.IsOne(named)
            ? One(named[0], parsed.GetRequiredValue(output), parsed.GetValue(form), parsed.GetValue(paper), parsed.GetValue(quiet), terminal)
            : Many(TrialFolders.Of(named).ByPath(), parsed.GetRequiredValue(output), parsed.GetValue(form) ?? Pdf, parsed.GetValue(paper), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int One(string folder, string output, string? form, string? paper, bool quiet, Terminal terminal)
    {
        if (form is not null)
        {
            throw new UsageException("--as is for several trials; of one trial the ending of --output says what it becomes.");
        }

        var render = Renderer(output);
        var reading = TrialFolder.Read(folder, terminal, eachWarning: false);
        if (TrialFolder.ToAnalyse(reading, terminal) is not { } trial)
        {
            return ExitCode.DataErrors;
        }

        terminal.Step($"Analysing {folder}");
        var analysis = TrialAnalysis.Of(trial);
        terminal.Step($"Writing {output}");
        Write(reading, analysis, paper, render, output);
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

    private static int Many(TrialFolders folders, string output, string form, string? paper, bool quiet, Terminal terminal)
    {
        if (EndingOf(output) is not null && !Directory.Exists(output))
        {
            throw new UsageException($"'{output}' is the name of one file, and there are several trials; a folder was expected, such as 'reports'.");
        }

        TrialFolder.KeepTrials(output);
        var render = Renderer("." + form);
        var lines = BatchRun.Run(
            folders.Trials,
            (trial, reading, analysis) =>
            {
                Write(reading, analysis, paper, render, Path.Combine(output, $"{trial.Name}.{form}"));
                return true;
            },
            (_, _) => { },
            terminal);
        if (!quiet)
        {
            BatchSummary.Print(lines, folders.PassedOver, terminal);
            terminal.Out.WriteLine($"The reports are in {output}.");
        }

        return BatchSummary.ExitCodeOf(lines);
    }

    private static void Write(TrialReading reading, TrialAnalysis analysis, string? paper, Func<ReportDocument, byte[]> render, string output)
    {
        var bytes = render(TrialReport.Of(analysis, Settings(reading, analysis.Trial, paper)));
        WholeFile.Write(output, stream => stream.Write(bytes));
    }

    /// <summary>The sheet, the files and the warnings of a report.</summary>
    /// <param name="reading">What was read.</param>
    /// <param name="trial">The trial in it.</param>
    /// <param name="paper">The sheet that was asked for; null for the one that goes with the trial's units.</param>
    public static ReportSettings Settings(TrialReading reading, StripTrial trial, string? paper) => new(
        CommonOptions.PaperOf(paper, trial.Units),
        TrialFolder.Inputs(reading),
        [.. reading.Warnings.Select(warning => warning.ToString())]);

    private static Func<ReportDocument, byte[]> Renderer(string output) => EndingOf(output) switch
    {
        Pdf => document => PdfReport.Render(document),
        Html => HtmlReport.Render,
        _ => throw new UsageException($"'{output}' is no name of a PDF or HTML file; a name that ends in .pdf or .html was expected."),
    };

    private static string? EndingOf(string output) => Path.GetExtension(output).ToUpperInvariant() switch
    {
        ".PDF" => Pdf,
        ".HTML" or ".HTM" => Html,
        _ => null,
    };
}
