using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Report;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit figures</c>: the figures of a report as files of their own.</summary>
internal static class FiguresCommand
{
    private const double PixelsPerPoint = 3;

    public static Command Create(Terminal terminal)
    {
        var folder = TrialFolder.Argument();
        var output = new Option<string>("--output", "-o") { Description = "The folder to write into.", HelpName = "DIR", Required = true };
        var quiet = CommonOptions.Quiet();
        var command = new Command("figures", "Write each figure of a trial's report as an SVG and a PNG file.")
        {
            folder,
            output,
            quiet,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), parsed.GetRequiredValue(output), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int Run(string folder, string output, bool quiet, Terminal terminal)
    {
        TrialFolder.KeepTrials(output);
        var reading = TrialFolder.Read(folder, terminal, eachWarning: false);
        if (TrialFolder.ToAnalyse(reading, terminal) is not { } trial)
        {
            return ExitCode.DataErrors;
        }

        terminal.Step($"Analysing {folder}");
        var document = TrialReport.Of(TrialAnalysis.Of(trial), ReportCommand.Settings(reading, trial, paper: null));
        var figures = TrialReport.Figures(document).ToArray();
        terminal.Step($"Writing {output}");
        foreach (var figure in figures)
        {
            WholeFile.Write(Path.Combine(output, figure.Name + ".svg"), stream => FigureFiles.WriteSvg(figure.Figure, stream));
            WholeFile.Write(Path.Combine(output, figure.Name + ".png"), stream => FigureFiles.WritePng(figure.Figure, stream, pixelsPerPoint: PixelsPerPoint));
        }

        if (!quiet)
        {
            terminal.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Wrote {figures.Length} figures, each as SVG and PNG, into {output}: {string.Join(", ", figures.Select(figure => figure.Name))}"));
        }

        return ExitCode.Done;
    }
}
