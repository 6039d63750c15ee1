using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Ingest;
using TrialKit.Reporting.Words;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit check</c>: reads a trial folder and says what was found and every problem.</summary>
internal static class CheckCommand
{
    public static Command Create(Terminal terminal)
    {
        var folder = TrialFolder.Argument();
        var quiet = CommonOptions.Quiet();
        var command = new Command("check", "Read a trial folder and list what it holds and every error and warning, each with its place. Nothing is analysed or written.")
        {
            folder,
            quiet,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int Run(string folder, bool quiet, Terminal terminal)
    {
        var reading = TrialFolder.Read(folder, terminal, eachWarning: true);
        if (!quiet)
        {
            Print(reading, terminal);
        }

        return reading.Trial is null ? ExitCode.DataErrors : ExitCode.Done;
    }

    private static void Print(TrialReading reading, Terminal terminal)
    {
        if (reading.Trial is { } trial)
        {
            terminal.Out.WriteLine(trial.Title);
            terminal.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{trial.Crop.Name}, planted {trial.Planting.Date:yyyy-MM-dd}, {TrialWords.Layout(trial)}, control {trial.Design.Control?.Label ?? "none named"}, level {trial.Design.Level.Alpha:0.########}"));
            terminal.Out.WriteLine();
        }

        if (reading.Trial is { IsPlan: true } plan)
        {
            terminal.Out.WriteLine(plan.Strips.IsEmpty ? "A plan: strips are yet to be drawn." : "A plan: nothing has been measured yet.");
        }

        foreach (var strip in reading.Trial?.Strips.Where(strip => !strip.IsAnalysed) ?? [])
        {
            terminal.WriteWrapped($"Strip {strip} is left out of the analysis: {strip.LeftOut}.", indent: 0);
        }

        ConsoleTable.Print(
            terminal,
            "Read",
            [new("Table"), new("Rows", IsNumber: true), new("Used", IsNumber: true), new("Left out", IsNumber: true)],
            reading.Tables.Select(table => (string[])[table.Table, Count(table.Read), Count(table.Used), Count(table.LeftOut)]));
        foreach (var table in reading.Tables.Where(table => table.Form is not null))
        {
            terminal.Out.WriteLine($"{table.File} was recognised as: {table.Form}");
        }

        var (errors, warnings) = (reading.Errors.Count(), reading.Warnings.Count());
        if (reading.Trial is not null)
        {
            terminal.Out.WriteLine(warnings == 0
                ? $"No problems. Next: {Next(reading)}"
                : string.Create(CultureInfo.InvariantCulture, $"{warnings} {(warnings == 1 ? "warning" : "warnings")}, no errors. Read them, then: {Next(reading)}"));
        }
        else
        {
            terminal.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{errors} {(errors == 1 ? "error" : "errors")}, {warnings} {(warnings == 1 ? "warning" : "warnings")}."));
        }
    }

    private static string Next(TrialReading reading) => reading.Trial! switch
    {
        { IsPlan: true, Strips.IsEmpty: true } => $"trialkit plan {reading.Folder}",
        { HasResults: false } => $"trialkit sheets {reading.Folder}",
        _ => $"trialkit analyze {reading.Folder}",
    };

    private static string Count(int value) => value.ToString("N0", CultureInfo.InvariantCulture);
}
