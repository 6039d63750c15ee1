using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Ingest;
using TrialKit.Trials;

namespace TrialKit.Cli.Commands;

/// <summary>The options of the commands that read a weather file, and the reading of it.</summary>
internal sealed class WeatherArguments
{
    private const int FirstYear = 1600;
    private const int LastYear = 2999;

    private readonly Option<int> fill = new("--fill") { Description = "Fill gaps of up to N days, 1 to 3, by interpolation; filled days are flagged.", HelpName = "N" };
    private readonly Option<string?> csv = new("--csv") { Description = "Also write the table as CSV.", HelpName = "FILE.csv" };
    private readonly Option<string?> figure = new("--figure") { Description = "Also draw the figure, as SVG, PNG or PDF by the name's ending.", HelpName = "FILE" };

    /// <summary>What the weather record leaves open.</summary>
    public WeatherFileOptions Record { get; } = new("--", "", hasSoil: true);

    /// <summary>Adds the options to a command.</summary>
    public WeatherArguments AddTo(Command command)
    {
        foreach (var option in Record.All.Concat([fill, csv, figure]))
        {
            command.Add(option);
        }

        return this;
    }

    /// <summary>The longest gap to fill, in days.</summary>
    /// <exception cref="UsageException">It is none that can be filled.</exception>
    public int Fill(ParseResult parsed) => parsed.GetValue(fill) is >= 0 and <= TemperatureSeries.LongestFill
        ? parsed.GetValue(fill)
        : throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"--fill is {parsed.GetValue(fill)}; 0 to {TemperatureSeries.LongestFill} days was expected."));

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
    /// <param name="path">The file.</param>
    /// <param name="options">What is said of it.</param>
    /// <param name="parsed">The command line.</param>
    /// <param name="terminal">Where is printed.</param>
    /// <param name="quiet">Whether the form is left unsaid.</param>
    /// <returns>Null after errors.</returns>
    /// <exception cref="UsageException">There is no such file, or an output would overwrite it.</exception>
    public TemperatureSeries? Read(string path, WeatherFileOptions options, ParseResult parsed, Terminal terminal, bool quiet)
    {
        if (!File.Exists(path))
        {
            throw new UsageException($"there is no file '{path}'; a file of weather was expected.");
        }

        if (new[] { Csv(parsed), Figure(parsed) }.Any(output => output is not null && Path.GetFullPath(output) == Path.GetFullPath(path)))
        {
            throw new UsageException($"the output would overwrite '{path}'; name another.");
        }

        terminal.Step($"Reading {path}");
        var reading = WeatherReader.Read(path, new WeatherOptions
        {
            Station = options.Station(parsed),
            Unit = options.Unit(parsed),
            Fill = Fill(parsed),
            ReadsSoil = options.ReadsSoil(parsed),
        });
        ProblemPrinter.Print(reading.Problems, terminal.Error, eachWarning: false);
        Hint(reading, options, terminal);
        if (reading.Series is { } series && series.Days.IsEmpty)
        {
            throw new UsageException($"'{path}' holds no day with both extremes.");
        }

        if (reading.Series is { } known && !quiet)
        {
            terminal.WriteWrapped(string.Create(CultureInfo.InvariantCulture, $"{path}: {reading.Form}{(reading.Station is { } name ? $", station {name}" : "")}, {known.Days.Length} days from {known.Days[0].Date:yyyy-MM-dd} to {known.Days[^1].Date:yyyy-MM-dd}{(known.Filled.IsEmpty ? "" : $", {known.Filled.Length} of them filled by interpolation")}"), indent: 0);
        }

        return reading.Series;
    }

    /// <summary>A date of an option.</summary>
    /// <exception cref="UsageException">It is no date, or none of a weather record.</exception>
    public static DateOnly? Date(string? text, string option) =>
        text is null ? null
        : !DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? throw new UsageException($"{option} is '{text}'; a date written 2026-04-27 was expected.")
        : date.Year is >= FirstYear and <= LastYear ? date
        : throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"{option} is {text}; a date from {FirstYear} to {LastYear} was expected."));

    private static void Hint(WeatherReading reading, WeatherFileOptions options, Terminal terminal)
    {
        if (reading.Problems.Any(problem => problem.Code == "TK123"))
        {
            terminal.Error.WriteLine($"The unit is never guessed: give the one the file was ordered in, {options.Prefix}unit F or {options.Prefix}unit C; a station's own file with values such as 289 for 28.9 C has {options.Prefix}unit \"0.1 C\".");
        }

        if (reading.Problems.Any(problem => problem.Code == "TK410"))
        {
            terminal.Error.WriteLine($"Choose one of the stations: {options.Prefix}station ID.");
        }
    }
}
