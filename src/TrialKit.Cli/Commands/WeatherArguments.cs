using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Ingest;
using TrialKit.Trials;

namespace TrialKit.Cli.Commands;

/// <summary>The options that say what a weather file leaves open, shared by the commands that read one.</summary>
internal sealed class WeatherArguments
{
    private readonly Option<string?> station = new("--station") { Description = "The station to read, where the file holds several.", HelpName = "ID" };
    private readonly Option<string?> unit = new("--unit") { Description = "The unit of temperatures where the file does not say it: F, C or '0.1 C'.", HelpName = "UNIT" };
    private readonly Option<int> fill = new("--fill") { Description = "Fill gaps of up to N days, 1 to 3, by interpolation; filled days are flagged.", HelpName = "N" };
    private readonly Option<bool> soil = new("--soil") { Description = "Read a station's soil temperatures at 5 cm in place of the air's." };
    private readonly Option<string?> csv = new("--csv") { Description = "Also write the table as CSV.", HelpName = "FILE.csv" };
    private readonly Option<string?> figure = new("--figure") { Description = "Also draw the figure, as SVG, PNG or PDF by the name's ending.", HelpName = "FILE" };

    /// <summary>Adds the options to a command.</summary>
    public WeatherArguments AddTo(Command command)
    {
        foreach (var option in new Option[] { station, unit, fill, soil, csv, figure })
        {
            command.Add(option);
        }

        unit.AcceptOnlyFromAmong("F", "C", "0.1 C");
        return this;
    }

    /// <summary>Whether the soil's temperatures are read.</summary>
    public bool ReadsSoil(ParseResult parsed) => parsed.GetValue(soil);

    /// <summary>The CSV file to write; null for none.</summary>
    /// <exception cref="UsageException">It lies in a trial folder, where it could take the place of the owner's files.</exception>
    public string? Csv(ParseResult parsed)
    {
        if (parsed.GetValue(csv) is { } path)
        {
            TrialFolder.KeepTrials(Path.GetDirectoryName(Path.GetFullPath(path))!);
        }

        return parsed.GetValue(csv);
    }

    /// <summary>The figure to write; null for none.</summary>
    /// <exception cref="UsageException">Its name ends in no known form.</exception>
    public string? Figure(ParseResult parsed) => parsed.GetValue(figure) is not { } path || FigureFile.IsKnown(path)
        ? parsed.GetValue(figure)
        : throw new UsageException($"'{path}' ends in no form that can be drawn; .svg, .png or .pdf was expected.");

    /// <summary>Reads a weather file, prints its problems, and says in which form it was recognised.</summary>
    /// <returns>Null after errors.</returns>
    /// <exception cref="UsageException">There is no such file, or an output would overwrite it.</exception>
    public TemperatureSeries? Read(string path, ParseResult parsed, Terminal terminal, bool quiet)
    {
        if (!File.Exists(path))
        {
            throw new UsageException($"there is no file '{path}'; a file of weather was expected.");
        }

        if (new[] { Csv(parsed), Figure(parsed) }.Any(output => output is not null && Path.GetFullPath(output) == Path.GetFullPath(path)))
        {
            throw new UsageException($"the output would overwrite '{path}'; name another.");
        }

        if (parsed.GetValue(fill) is < 0 or > TemperatureSeries.LongestFill)
        {
            throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"--fill is {parsed.GetValue(fill)}; 0 to {TemperatureSeries.LongestFill} days was expected."));
        }

        terminal.Step($"Reading {path}");
        var reading = WeatherReader.Read(path, new WeatherOptions
        {
            Station = parsed.GetValue(station),
            Unit = parsed.GetValue(unit),
            Fill = parsed.GetValue(fill),
            ReadsSoil = parsed.GetValue(soil),
        });
        ProblemPrinter.Print(reading.Problems, terminal.Error, eachWarning: false);
        if (reading.Problems.Any(problem => problem.Code == "TK123"))
        {
            terminal.Error.WriteLine("The unit is never guessed: give it with --unit F or --unit C.");
        }

        if (reading.Series is { } series && series.Days.IsEmpty)
        {
            throw new UsageException($"'{path}' holds no day with both extremes.");
        }

        if (reading.Series is { } known && !quiet)
        {
            terminal.WriteWrapped(string.Create(CultureInfo.InvariantCulture, $"{path}: {reading.Form}{(reading.Station is { } name ? $", station {name}" : "")}, {known.Days.Length} days from {known.Days[0].Date:yyyy-MM-dd} to {known.Days[^1].Date:yyyy-MM-dd}"), indent: 0);
        }

        return reading.Series;
    }

    /// <summary>A date of an option.</summary>
    /// <exception cref="UsageException">It is no date.</exception>
    public static DateOnly? Date(string? text, string option) =>
        text is null ? null
        : DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date
        : throw new UsageException($"{option} is '{text}'; a date written 2026-04-27 was expected.");
}
