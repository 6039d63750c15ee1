using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Sheets;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit sheets</c>: what goes to the field, on paper, in a workbook, or as a page for a phone.</summary>
internal static class SheetsCommand
{
    public static Command Create(Terminal terminal)
    {
        var folder = TrialFolder.Argument();
        var output = new Option<string?>("--output", "-o") { Description = "The folder to write into; FOLDER/sheets when not given.", HelpName = "DIR" };
        var page = new Option<bool>("--page") { Description = "Write a page for a phone, which needs no network, in place of paper and workbook." };
        var visits = new Option<string?>("--visits") { Description = "Days of visits that are known, such as 2026-05-10,2026-05-12: their columns and rows are dated.", HelpName = "DATE,DATE" };
        var paper = CommonOptions.Paper();
        var quiet = CommonOptions.Quiet();
        var command = new Command("sheets", "Write the sheets for the field: field-sheets.pdf and a workbook trial.xlsx; or, with --page, field-page.html for a phone.")
        {
            folder,
            output,
            page,
            visits,
            paper,
            quiet,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), parsed.GetValue(output), parsed.GetValue(page), Dates(parsed.GetValue(visits)), parsed.GetValue(paper), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int Run(string folder, string? output, bool page, ImmutableArray<DateOnly> visits, string? paper, bool quiet, Terminal terminal)
    {
        var target = output ?? Path.Combine(folder, "sheets");
        TrialFolder.KeepTrials(target);
        var reading = TrialFolder.Read(folder, terminal, eachWarning: false);
        if (reading.Trial is not { } trial)
        {
            return ExitCode.DataErrors;
        }

        if (trial.Strips.IsEmpty)
        {
            terminal.Error.WriteLine($"trialkit: {folder} has no strips yet: draw them with trialkit plan {folder}, or write strips.csv.");
            return ExitCode.DataErrors;
        }

        if (visits.Where(visit => visit < trial.Strips.Min(strip => strip.Planted)).ToArray() is [var early, ..])
        {
            throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"--visits holds {early:yyyy-MM-dd}, before planting; days from {trial.Strips.Min(strip => strip.Planted):yyyy-MM-dd} on were expected."));
        }

        terminal.Step($"Writing {target}");
        var settings = new SheetSettings(CommonOptions.PaperOf(paper, trial.Units), visits, TrialFolder.Inputs(reading));
        if (page)
        {
            WholeFile.Write(Path.Combine(target, "field-page.html"), stream => FieldPage.Write(trial, stream));
        }
        else
        {
            var sheets = PdfReport.Render(FieldSheets.Of(trial, settings));
            WholeFile.Write(Path.Combine(target, "field-sheets.pdf"), stream => stream.Write(sheets));
            WholeFile.Write(Path.Combine(target, "trial.xlsx"), stream => FieldWorkbook.Write(trial, settings, stream));
        }

        if (!quiet)
        {
            terminal.Out.WriteLine(page
                ? $"Wrote field-page.html into {target}. Copy it to the phone and open it there; export its tables into {folder} in the evening."
                : $"Wrote field-sheets.pdf and trial.xlsx into {target}. Fill in the workbook, then move it into {folder} in the place of the CSV tables it holds, strips.csv among them.");
        }

        return ExitCode.Done;
    }

    private static ImmutableArray<DateOnly> Dates(string? text)
    {
        DateOnly[] dates = [.. (text ?? string.Empty).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(Date)];
        return dates.Distinct().Count() == dates.Length
            ? [.. dates.Order()]
            : throw new UsageException($"--visits is '{text}'; each day once was expected.");
    }

    private static DateOnly Date(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
        ? date
        : throw new UsageException($"--visits holds '{text}'; dates such as 2026-05-10 with commas between them were expected.");
}
