using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Cli.Commands;

/// <summary>The options of a forecast that stand for, or change, what <c>[forecast]</c> of a trial says.</summary>
internal sealed class ForecastOptions
{
    private const double DeepestInches = 12;

    private readonly Option<string?> until = new("--observed-until") { Description = "Last day of the record to take as observed.", HelpName = "DATE" };
    private readonly Option<string?> forecast = new("--forecast") { Description = "Days of a weather forecast.", HelpName = "FILE" };
    private readonly Option<string?> normals = new("--normals") { Description = "A record of earlier years, whose daily means stand in for what no forecast covers.", HelpName = "FILE" };
    private readonly Option<double?> need = new("--need") { Description = "Heat from planting to emergence in F-days by the crop's or the trial's method, in place of the published range.", HelpName = "F-DAYS" };
    private readonly Option<double?> depth = new("--depth") { Description = "Planting depth in inches.", HelpName = "INCHES" };
    private readonly Option<double?> residue = new("--residue") { Description = "Ground covered by residue, percent.", HelpName = "PERCENT" };
    private readonly Option<string?> texture = new("--texture") { Description = "Soil: fine, medium or coarse.", HelpName = "SOIL" };
    private readonly Option<bool> dry = new("--dry") { Description = "The soil about the seed is dry." };
    private readonly Option<bool> notCounted = new("--skip-planting-day") { Description = "Do not count the planting day's heat." };
    private readonly WeatherFileOptions ofForecast = new("--forecast-", " of the forecast", hasSoil: false);
    private readonly WeatherFileOptions ofNormals = new("--normals-", " of the normals", hasSoil: true);

    /// <summary>Adds the options to a command.</summary>
    public ForecastOptions AddTo(Command command)
    {
        texture.AcceptOnlyFromAmong("fine", "medium", "coarse");
        foreach (var option in ofForecast.All.Prepend(forecast).Prepend(until).Append(normals).Concat(ofNormals.All).Concat([need, depth, residue, texture, dry, notCounted]))
        {
            command.Add(option);
        }

        return this;
    }

    /// <summary>Whether the planting day's heat is left out.</summary>
    public bool SkipsPlantingDay(ParseResult parsed) => parsed.GetValue(notCounted);

    /// <summary>The settings with what the options say in place of their own; null after errors of a file.</summary>
    /// <param name="settings">The settings of a trial, or those that say nothing.</param>
    /// <param name="parsed">The command line.</param>
    /// <param name="weather">Reads the files.</param>
    /// <param name="terminal">Where problems are printed.</param>
    /// <param name="quiet">Whether the files' forms are left unsaid.</param>
    /// <exception cref="UsageException">A number is out of its range, or an option belongs to a file that is not given.</exception>
    public ForecastSettings? Over(ForecastSettings settings, ParseResult parsed, WeatherArguments weather, Terminal terminal, bool quiet)
    {
        var (ahead, years) = (parsed.GetValue(forecast), parsed.GetValue(normals));
        Belongs(ofForecast, ahead, "--forecast", parsed);
        Belongs(ofNormals, years, "--normals", parsed);
        var given = Number(parsed.GetValue(need), "--need", double.MaxValue, "a number above 0") is { } sum ? HeatSum.FromFahrenheitDays(sum) : (HeatSum?)null;
        var changed = settings with
        {
            Need = given is { } heat ? new HeatRange(heat, heat, heat) : settings.Need,
            Conditions = Conditions(settings.Conditions, parsed),
            ObservedUntil = WeatherArguments.Date(parsed.GetValue(until), "--observed-until") ?? settings.ObservedUntil,
            Fill = Math.Max(settings.Fill, weather.Fill(parsed)),
        };
        if (ahead is not null)
        {
            changed = changed with { Days = weather.Read(ahead, ofForecast, parsed, terminal, quiet) };
        }

        if (years is not null)
        {
            changed = changed with { Normals = weather.Read(years, ofNormals, parsed, terminal, quiet), NormalsAreSoil = ofNormals.ReadsSoil(parsed) };
        }

        return (ahead is not null && changed.Days is null) || (years is not null && changed.Normals is null) ? null : changed;
    }

    /// <summary>Whether the need is given.</summary>
    public bool HasNeed(ParseResult parsed) => parsed.GetValue(need) is not null;

    private FieldConditions Conditions(FieldConditions known, ParseResult parsed) => new(
        Number(parsed.GetValue(depth), "--depth", DeepestInches, "inches above 0 and up to 12") is { } deep ? Length.FromInches(deep) : known.Depth,
        Number(parsed.GetValue(residue), "--residue", 100, "a percentage above 0 and up to 100") is { } percent ? Ratio.FromPercent(percent) : known.Residue,
        parsed.GetValue(texture) switch { "fine" => SoilTexture.Fine, "medium" => SoilTexture.Medium, "coarse" => SoilTexture.Coarse, _ => known.Texture },
        known.DrySeedZone || parsed.GetValue(dry));

    private static void Belongs(WeatherFileOptions options, string? file, string option, ParseResult parsed)
    {
        if (file is null && options.Given(parsed).FirstOrDefault() is { } given)
        {
            throw new UsageException($"{given} is for the file of {option}, which was not given.");
        }
    }

    private static double? Number(double? value, string option, double most, string expected) => value is null || (value > 0 && value <= most)
        ? value
        : throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"{option} is {value}; {expected} was expected."));
}
