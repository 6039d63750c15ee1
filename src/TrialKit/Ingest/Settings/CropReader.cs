using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Toml;
using TrialKit.Trials;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads the crop: the name of a built-in one, or a section <c>[crop]</c> that defines one or changes figures of a built-in one.</summary>
internal static class CropReader
{
    private const string OwnSource = "trial.toml";
    private const double LargestMoisture = 60;

    /// <summary>Reads the key <c>crop</c>.</summary>
    /// <returns>Null with an error added when it is absent or not known.</returns>
    public static Crop? Read(TomlSection root, ProblemList problems)
    {
        root.Require("crop", "crop = \"corn\"");
        if (root.IsSection("crop"))
        {
            var section = root.Section("crop", "[crop]")!;
            var own = ReadSection(section, problems);
            section.Finish();
            return own;
        }

        if (root.Text("crop") is not { } name)
        {
            return null;
        }

        if (CropTable.Find(name) is { } crop)
        {
            return crop;
        }

        problems.Add(TomlProblems.UnknownCrop(root.At("crop"), name, [.. CropTable.Crops.Select(known => known.Name)]));
        return null;
    }

    private static Crop? ReadSection(TomlSection section, ProblemList problems)
    {
        section.Require("name", "name = \"corn\"");
        var name = section.Text("name");
        var builtIn = name is null ? null : CropTable.Find(name);
        var bushel = SettingsReader.Positive(section.Quantity("bushel", UnitKinds.Weight), "bushel", problems);
        var moisture = SettingsReader.Share(section, "standard_moisture", above: 0, LargestMoisture, problems);
        var heat = ReadHeat(section, name, problems) ?? builtIn?.Heat;
        if (name is null)
        {
            return null;
        }

        if (heat is null && !section.Has("heat_ceiling"))
        {
            section.Require("heat_base", "heat_base = \"50 F\"");
        }

        return heat is null ? null : new Crop(
            builtIn?.Name ?? name,
            bushel is null ? builtIn?.Bushel : UnitKinds.ToMass(bushel.Value, bushel.Unit),
            moisture ?? builtIn?.StandardMoisture,
            heat,
            builtIn is null ? OwnSource : $"{OwnSource}; else {builtIn.Source}");
    }

    /// <summary>The simple average above a base, or, when a ceiling is given too, the extremes brought within both.</summary>
    private static HeatMethod? ReadHeat(TomlSection section, string? name, ProblemList problems)
    {
        var low = section.Quantity("heat_base", UnitKinds.Temperature);
        var high = section.Quantity("heat_ceiling", UnitKinds.Temperature);
        if (low is null)
        {
            if (high is not null)
            {
                section.Require("heat_base", "heat_base = \"50 F\"");
            }

            return null;
        }

        var lower = UnitKinds.ToTemperature(low.Value, low.Unit);
        if (high is null)
        {
            return new HeatMethod($"{name} {Wording.Number(low.Value)} {low.Unit}", HeatRule.SimpleAverage, lower, Upper: null, OwnSource);
        }

        var upper = UnitKinds.ToTemperature(high.Value, high.Unit);
        if (upper.DegreesCelsius <= lower.DegreesCelsius)
        {
            problems.Add(TomlProblems.OutOfRange(high.At, "heat_ceiling", Wording.Quote(high.Written), $"a temperature above heat_base ({low.Written})"));
            return null;
        }

        return new HeatMethod(
            $"{name} {Wording.Number(high.Value)} {high.Unit}/{Wording.Number(low.Value)} {low.Unit}", HeatRule.ExtremesClipped, lower, upper, OwnSource);
    }
}
