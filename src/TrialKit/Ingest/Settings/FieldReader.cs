using TrialKit.Ingest.Toml;
using TrialKit.Trials;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads the section <c>[field]</c>: the room the trial has and what is wanted in it.</summary>
internal static class FieldReader
{
    private const long MostRows = 96;
    private const long MostReplicates = 100;
    private const long MostPasses = 100;
    private const long MostSpots = 26;

    /// <summary>The section; null when there is none.</summary>
    public static FieldSpace? Read(TomlSection root, ProblemList problems)
    {
        if (root.Section("field", "[field]") is not { } section)
        {
            return null;
        }

        var plain = new FieldSpace();
        var field = new FieldSpace
        {
            Length = SettingsReader.Length(section, "length", problems),
            Width = SettingsReader.Length(section, "width", problems),
            PlanterRows = Whole(section, "planter_rows", 1, MostRows),
            Replicates = Whole(section, "replicates", 1, MostReplicates),
            Share = section.Choice("strip", ["pass", "planter half"]) == "planter half" ? StripShare.PlanterHalf : StripShare.Passes,
            SidesAreFixed = section.Choice("sides", ["drawn", "fixed"]) == "fixed",
            PassesPerStrip = Whole(section, "passes", 1, MostPasses) ?? plain.PassesPerStrip,
            BorderPasses = Whole(section, "border_passes", 0, MostPasses) ?? plain.BorderPasses,
            TramlineSpacing = SettingsReader.Length(section, "tramlines", problems),
            TramlineWidth = SettingsReader.Length(section, "tramline_width", problems) ?? plain.TramlineWidth,
            Spots = Whole(section, "spots", 1, MostSpots) ?? plain.Spots,
            SpotLength = SettingsReader.Length(section, "spot_length", problems),
            EndMargin = SettingsReader.Length(section, "end_margin", problems) ?? plain.EndMargin,
            CornerLatitude = section.Number("corner_latitude", -90, 90, "a latitude from -90 to 90 degrees"),
            CornerLongitude = section.Number("corner_longitude", -180, 180, "a longitude from -180 to 180 degrees"),
            Bearing = section.Number("bearing", 0, 360, "a bearing from 0 to 360 degrees"),
        };
        section.Finish();
        return field;
    }

    private static int? Whole(TomlSection section, string key, long least, long most) =>
        section.WholeNumber(key, least, most) is { } number ? (int)number : null;
}
