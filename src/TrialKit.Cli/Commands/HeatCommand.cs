using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Heat;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Trials;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit heat</c>: the heat units of a weather file between dates, by any method or several side by side.</summary>
internal static class HeatCommand
{
    private const int LongestOnScreen = 62;

    public static Command Create(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = "The weather file; its form is recognised by its content." };
        var from = new Option<string?>("--from") { Description = "First day; that of the file when not given.", HelpName = "DATE" };
        var to = new Option<string?>("--to") { Description = "Last day; that of the file when not given.", HelpName = "DATE" };
        var methods = new Option<string[]>("--method", "-m") { Description = "A method, such as \"corn 86/50\" or \"single sine 86/50 horizontal\"; may be given again. Corn 86/50 when not given.", HelpName = "NAME" };
        var sideBySide = new Option<bool>("--side-by-side") { Description = "Count by each of the methods that are taught, for comparison." };
        var units = new Option<string>("--units") { Description = "us for F-days, metric for C-days.", HelpName = "SYSTEM" };
        units.AcceptOnlyFromAmong("us", "metric");
        var quiet = CommonOptions.Quiet();
        var command = new Command("heat", "Count the heat units of a weather file between dates, day by day and in sum, by one method or several.") { file, from, to, methods, sideBySide, units, quiet };
        var weather = new WeatherArguments().AddTo(command);
        command.SetAction(parsed =>
        {
            var isQuiet = parsed.GetValue(quiet);
            var path = parsed.GetRequiredValue(file);
            HeatMethod[] chosen = parsed.GetValue(sideBySide) ? [.. HeatMethods.SideBySide] : [.. (parsed.GetValue(methods) is { Length: > 0 } names ? names : [HeatMethods.Corn.Name]).Select(Method)];
            var (first, last) = (WeatherArguments.Date(parsed.GetValue(from), "--from"), WeatherArguments.Date(parsed.GetValue(to), "--to"));
            if (weather.Read(path, weather.Record, parsed, terminal, isQuiet) is not { } series)
            {
                return ExitCode.DataErrors;
            }

            var (begin, end) = (first ?? series.Days[0].Date, last ?? series.Days[^1].Date);
            if (end < begin)
            {
                throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"the last day, {end:yyyy-MM-dd}, is before the first, {begin:yyyy-MM-dd}."));
            }

            HeatTally[] tallies = [.. chosen.Select(method => HeatTally.Of(series, method, begin, end))];
            var system = parsed.GetValue(units) == "metric" ? UnitSystem.Metric : UnitSystem.Us;
            if (!isQuiet)
            {
                Print(tallies, system, terminal);
            }

            if (weather.Csv(parsed) is { } csv)
            {
                WholeFile.Write(csv, stream => CsvTables.Write(HeatTables.Of(tallies, system), stream));
            }

            if (weather.Figure(parsed) is { } figure)
            {
                Draw(figure, tallies, system, path);
            }

            return ExitCode.Done;
        });
        return command;
    }

    private static HeatMethod Method(string name) => HeatMethods.Find(name)
        ?? throw new UsageException($"'{name}' is no heat method; one of {string.Join(", ", HeatMethods.All.Select(method => $"\"{method.Name}\""))} was expected, or {HeatMethods.NameForm}.");

    private static void Print(HeatTally[] tallies, UnitSystem units, Terminal terminal)
    {
        if (tallies is [var only] && only.Days.Length <= LongestOnScreen)
        {
            ConsoleTable.Print(
                terminal,
                $"Heat by {only.Method.Name}, {only.Unit(units)}",
                [new("Day"), new("Heat", IsNumber: true), new("Sum", IsNumber: true), new("")],
                only.Days.Select(day => (string[])[Date(day.Date), NumberText.Number(day.Units is { } heat ? only.In(heat, units) : null, 2), (day.IsComplete ? "" : "at least ") + NumberText.Number(only.In(day.Sum, units), 2), day.IsFilled ? "filled" : day.Units is null ? "missing" : ""]));
        }

        ConsoleTable.Print(
            terminal,
            string.Create(CultureInfo.InvariantCulture, $"{Date(tallies[0].Days[0].Date)} to {Date(tallies[0].Days[^1].Date)}"),
            [new("Method"), new("Sum", IsNumber: true), new("Unit"), new("Missing", IsNumber: true), new("Filled", IsNumber: true)],
            tallies.Select(tally => (string[])[tally.Method.Name, Total(tally, units), tally.Unit(units), NumberText.Count(tally.Missing.Count()), NumberText.Count(tally.Filled.Count())]));
        foreach (var tally in tallies)
        {
            terminal.WriteWrapped($"{tally.Method.Name}: {tally.Method.Source}.", indent: 2);
            if (!tally.BySingle.IsEmpty)
            {
                terminal.WriteWrapped($"{tally.Method.Name}: counted by the single form on {string.Join(", ", tally.BySingle.Take(5).Select(Date))}{(tally.BySingle.Length > 5 ? " and others" : "")}, since the next day's minimum is not on record.", indent: 2);
            }
        }

        if (tallies.Any(tally => tally.Method.Rule == HeatRule.Hourly && tally.Missing.Any()))
        {
            terminal.WriteWrapped("The hourly method needs a file with a temperature in every hour; other days count as missing.", indent: 2);
        }
    }

    private static string Total(HeatTally tally, UnitSystem units) =>
        (tally.IsComplete ? "" : "at least ") + NumberText.Number(tally.In(tally.Total, units), 2) + (tally.IsComplete ? "" : ", incomplete");

    private static void Draw(string path, HeatTally[] tallies, UnitSystem units, string source)
    {
        var days = tallies[0].Days;
        if (days.Length < 2)
        {
            throw new UsageException("heat is drawn of two days or more.");
        }

        var title = string.Create(CultureInfo.InvariantCulture, $"Heat from {days[0].Date:yyyy-MM-dd} to {days[^1].Date:yyyy-MM-dd}");
        var words = string.Join("; ", tallies.Select(tally => $"{tally.Method.Name}: {Total(tally, units)} {tally.Unit(units)}"));
        IFigure figure = tallies is [var only] && only.Days.All(day => day.Units is null or >= 0)
            ? new HeatFigure(only.Unit(units), [.. only.Days.Select(day => new HeatDay(day.Date, day.Units is { } heat ? only.In(heat, units) : null, day.IsFilled ? DayKind.Filled : DayKind.Observed))], [], words)
            : new HeatMethodsFigure(days[0].Date, [.. tallies.Select(tally => Series(tally, units))], Filled(tallies), words);
        FigureFile.Write(
            path,
            figure,
            title,
            [$"Temperatures: {Path.GetFileName(source)}{(Filled(tallies) is { } note ? $"; {note}" : "")}.", .. tallies.Select(tally => $"{tally.Method.Name}: {tally.Method.Source}.")],
            new Table(title, [new("Method"), new("Sum", null, ColumnAlignment.Right), new("Unit"), new("Days missing", null, ColumnAlignment.Right), new("Days filled", null, ColumnAlignment.Right)], [.. tallies.Select(tally => TableRow.Of(tally.Method.Name, Total(tally, units), tally.Unit(units), NumberText.Count(tally.Missing.Count()), NumberText.Count(tally.Filled.Count())))]),
            Path.GetFileName(source));
    }

    private static HeatSeries Series(HeatTally tally, UnitSystem units) => new(
        tally.Method.Name,
        tally.Unit(units),
        [.. tally.Days.Select(day => tally.In(day.Sum, units))],
        tally.Days.Count(day => day.IsComplete),
        (tally.IsComplete ? "" : "at least ") + NumberText.Number(tally.In(tally.Total, units), 0));

    // A double form leans on the next day too: the others count the days that are filled themselves.
    private static string? Filled(HeatTally[] tallies) => tallies.Min(tally => tally.Filled.Count()) is > 0 and var filled
        ? string.Create(CultureInfo.InvariantCulture, $"{filled} of {tallies[0].Days.Length} days filled by interpolation")
        : null;

    private static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
