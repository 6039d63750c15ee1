using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Toml;
using TrialKit.Ingest.Weather;
using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads the section <c>[forecast]</c>: the heat from planting to emergence, the field's conditions, and the days to come.</summary>
internal static class ForecastReader
{
    private static readonly UnitKind Heat = new("heat sum", ["F-days", "C-days"], "115 F-days");

    /// <summary>Reads the section; an absent one asks for nothing.</summary>
    public static ForecastDraft Read(TomlSection root, string folder, DateOrder dates, ProblemList problems)
    {
        if (root.Section("forecast", "[forecast]") is not { } section)
        {
            return new ForecastDraft();
        }

        var need = Sum(section, "need", problems);
        var low = Sum(section, "need_low", problems) ?? need;
        var high = Sum(section, "need_high", problems) ?? need;
        if (need is null && (section.Has("need_low") || section.Has("need_high")))
        {
            section.Require("need", "need = \"115 F-days\"");
        }

        HeatRange? range = null;
        if (need is { } middle)
        {
            range = new HeatRange(low!.Value, middle, high!.Value);
            if (!(range.Low.FahrenheitDays <= middle.FahrenheitDays && middle.FahrenheitDays <= range.High.FahrenheitDays))
            {
                problems.Add(TomlProblems.OutOfRange(section.At("need"), "need", Wording.Quote(section.Text("need")!), "a sum between need_low and need_high"));
            }
        }

        var draft = new ForecastDraft
        {
            Settings = new ForecastSettings
            {
                Need = range,
                Conditions = new FieldConditions(
                    Depth: null,
                    SettingsReader.Share(section, "residue", above: 0, most: 100, problems),
                    section.Choice("texture", ["fine", "medium", "coarse"]) switch
                    {
                        "fine" => SoilTexture.Fine,
                        "medium" => SoilTexture.Medium,
                        "coarse" => SoilTexture.Coarse,
                        _ => null,
                    },
                    section.Flag("dry_seed_zone") ?? false),
                ObservedUntil = section.Date("observed_until", dates),
                NormalsAreSoil = section.Flag("normals_soil") ?? false,
            },
            File = Path(section, "file", folder, problems),
            Choices = Choices(section, string.Empty),
            NormalsFile = Path(section, "normals", folder, problems),
            NormalsChoices = Choices(section, "normals_"),
        };
        section.Finish();
        return draft;
    }

    // Each file has a station and a unit of its own: those of the weather file prove nothing for another.
    private static WeatherChoices Choices(TomlSection section, string prefix) =>
        new(section.Text(prefix + "station"), section.Choice(prefix + "unit", UnitKinds.Temperature.Units)) { IsFurther = true, StationKey = prefix + "station", Section = "forecast" };

    private static HeatSum? Sum(TomlSection section, string key, ProblemList problems) =>
        SettingsReader.Positive(section.Quantity(key, Heat), key, problems) is { } sum
            ? sum.Unit == "C-days" ? HeatSum.FromCelsiusDays(sum.Value) : HeatSum.FromFahrenheitDays(sum.Value)
            : null;

    private static string? Path(TomlSection section, string key, string folder, ProblemList problems) =>
        section.Text(key) is { } file ? FolderPath.Check(folder, file, section.At(key), problems) : null;
}
