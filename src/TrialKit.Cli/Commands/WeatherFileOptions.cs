using System.CommandLine;

namespace TrialKit.Cli.Commands;

/// <summary>The options that say what one weather file leaves open: each file has its own.</summary>
internal sealed class WeatherFileOptions
{
    private readonly Option<string?> station;
    private readonly Option<string?> unit;
    private readonly Option<bool>? soil;

    /// <summary>The options of a file.</summary>
    /// <param name="prefix">What their names begin with, such as <c>--normals-</c>.</param>
    /// <param name="of">The file in words, such as <c> of the normals</c>; empty for the record.</param>
    /// <param name="hasSoil">Whether it may be one of the soil.</param>
    public WeatherFileOptions(string prefix, string of, bool hasSoil)
    {
        Prefix = prefix;
        station = new(prefix + "station") { Description = $"The station to read{of}, where the file holds several.", HelpName = "ID" };
        unit = new(prefix + "unit") { Description = $"The unit of temperatures{of} where the file does not say it: F, C or '0.1 C'.", HelpName = "UNIT" };
        unit.AcceptOnlyFromAmong("F", "C", "0.1 C");
        soil = hasSoil ? new(prefix + "soil") { Description = $"Read a station's soil temperatures at 5 cm{of} in place of the air's." } : null;
    }

    /// <summary>What the options' names begin with.</summary>
    public string Prefix { get; }

    /// <summary>The options.</summary>
    public IEnumerable<Option> All => soil is null ? [station, unit] : [station, unit, soil];

    /// <summary>The station chosen; null for none.</summary>
    public string? Station(ParseResult parsed) => parsed.GetValue(station);

    /// <summary>The unit given; null for none.</summary>
    public string? Unit(ParseResult parsed) => parsed.GetValue(unit);

    /// <summary>Whether the soil's temperatures are read.</summary>
    public bool ReadsSoil(ParseResult parsed) => soil is not null && parsed.GetValue(soil);

    /// <summary>The names of the options that were given.</summary>
    public IEnumerable<string> Given(ParseResult parsed) =>
        from entry in new[] { (Name: "station", Is: Station(parsed) is not null), (Name: "unit", Is: Unit(parsed) is not null), (Name: "soil", Is: ReadsSoil(parsed)) }
        where entry.Is
        select Prefix + entry.Name;
}
