using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Heat;

/// <summary>What to look out for in the first days after planting: cold, and depth.</summary>
/// <remarks>
/// Corn: soil at 50 F or above at 4 inches and warming (Iowa State University); near 40 F within a day or two of planting may injure (University of Minnesota); 48 hours above 50 F for corn,
/// 24 for soybean (University of Nebraska). Depth: corn 1.5 to 3 inches, never under 1.5 (value from memory); soybean 1 to 1.5 inches in tilled soil (Ohio State University).
/// </remarks>
public static class PlantingCautions
{
    private const double InjuryFahrenheit = 40;
    private const double ColdFahrenheit = 50;
    private const int InjuryDays = 2;

    /// <summary>The cautions for a crop planted on a day.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="series">Temperatures.</param>
    /// <param name="isSoil">Whether they are those of the soil; those of the air are said to be only a sign.</param>
    /// <param name="planted">The planting day.</param>
    /// <param name="depth">The planting depth; null when not known.</param>
    public static IEnumerable<Finding> Of(Crop crop, TemperatureSeries series, bool isSoil, DateOnly planted, Length? depth)
    {
        ArgumentNullException.ThrowIfNull(crop);
        ArgumentNullException.ThrowIfNull(series);
        var isCorn = Identifier.Same(crop.Name, "corn");
        if (!isCorn && !Identifier.Same(crop.Name, "soybean"))
        {
            return [];
        }

        return Cold(isCorn, series, isSoil ? "soil" : "air", planted).Concat(Depth(isCorn, depth));
    }

    private static IEnumerable<Finding> Cold(bool isCorn, TemperatureSeries series, string what, DateOnly planted)
    {
        var note = what == "air" ? " Air tells of the soil only roughly." : string.Empty;
        var after = series.Days.Where(day => day.Date >= planted && day.Date <= planted.AddDays(InjuryDays)).ToArray();
        if (after.Length == 0)
        {
            yield break;
        }

        var coldest = after.MinBy(day => HeatDegrees.Fahrenheit(day.Minimum));
        if (isCorn && HeatDegrees.Fahrenheit(coldest.Minimum) <= InjuryFahrenheit)
        {
            yield return new("cold-after-planting", FindingWeight.Caution, FormattableString.Invariant($"The {what} fell to {HeatDegrees.Fahrenheit(coldest.Minimum):0.#} F on {coldest.Date:yyyy-MM-dd}, within two days of planting; near 40 F may injure corn that is taking up water (University of Minnesota).{note}"));
        }

        // The planting day and the next are 48 hours, the planting day alone is 24.
        var hours = isCorn ? 48 : 24;
        var cold = after.Where(day => day.Date < planted.AddDays(hours / 24)).Where(day => HeatDegrees.Fahrenheit(day.Minimum) < ColdFahrenheit).ToArray();
        if (cold.Length > 0)
        {
            yield return new("cool-after-planting", FindingWeight.Note, FormattableString.Invariant($"The {what} was below 50 F within {hours} hours of planting ({cold[0].Date:yyyy-MM-dd}); {hours} hours above are advised (University of Nebraska).{note}{(isCorn ? " Soil at 50 F or above at 4 inches and warming is advised for corn (Iowa State University)." : string.Empty)}"));
        }
    }

    private static IEnumerable<Finding> Depth(bool isCorn, Length? depth)
    {
        var (least, most, source) = isCorn ? (1.5, 3.0, "value from memory") : (1.0, 1.5, "Ohio State University, tilled soil");
        if (depth is { } given && (given.Inches < least || given.Inches > most))
        {
            yield return new("planting-depth", FindingWeight.Caution, FormattableString.Invariant($"Planted {given.Inches:0.##} in deep; {least:0.#} to {most:0.#} in is advised ({source})."));
        }
    }
}
