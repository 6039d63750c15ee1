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
    /// <param name="days">The days on hand; a day of the air is said to tell of the soil only roughly, and a day that was not observed is not told as one that was.</param>
    /// <param name="planted">The planting day.</param>
    /// <param name="depth">The planting depth; null when not known.</param>
    public static IEnumerable<PlantingCaution> Of(Crop crop, ForecastDays days, DateOnly planted, Length? depth)
    {
        ArgumentNullException.ThrowIfNull(crop);
        ArgumentNullException.ThrowIfNull(days);
        var isCorn = Identifier.Same(crop.Name, "corn");
        if (!isCorn && !Identifier.Same(crop.Name, "soybean"))
        {
            return [];
        }

        return Cold(isCorn, days, planted).Concat(Depth(isCorn, depth));
    }

    private static IEnumerable<PlantingCaution> Cold(bool isCorn, ForecastDays days, DateOnly planted)
    {
        var after = days.Series.Days.Where(day => day.Date.DayNumber - planted.DayNumber is >= 0 and <= InjuryDays).ToArray();
        if (after.Length == 0)
        {
            yield break;
        }

        var coldest = after.MinBy(day => HeatDegrees.Fahrenheit(day.Minimum));
        if (isCorn && HeatDegrees.Fahrenheit(coldest.Minimum) <= InjuryFahrenheit)
        {
            var degrees = FormattableString.Invariant($"{HeatDegrees.Fahrenheit(coldest.Minimum):0.#} F on {coldest.Date:yyyy-MM-dd}");
            var fall = days.KindOf(coldest.Date) switch
            {
                DayKind.Normal => $"The {What(days, coldest.Date)} normally falls to {degrees}",
                DayKind.Forecast => $"The {What(days, coldest.Date)} is forecast to fall to {degrees}",
                DayKind.Filled => $"The {What(days, coldest.Date)} fell to {degrees} by interpolation",
                _ => $"The {What(days, coldest.Date)} fell to {degrees}",
            };
            yield return new(new("cold-after-planting", FindingWeight.Caution, $"{fall}, within two days of planting; near 40 F may injure corn that is taking up water (University of Minnesota).{AirNote(days, coldest.Date)}"), days.KindOf(coldest.Date));
        }

        // The planting day and the next are 48 hours, the planting day alone is 24.
        var hours = isCorn ? 48 : 24;
        var cold = after.Where(day => day.Date.DayNumber < planted.DayNumber + (hours / 24)).Where(day => HeatDegrees.Fahrenheit(day.Minimum) < ColdFahrenheit).Select(day => day.Date).ToArray();
        if (cold.Length > 0)
        {
            var below = days.KindOf(cold[0]) switch
            {
                DayKind.Normal => "is normally below",
                DayKind.Forecast => "is forecast to be below",
                DayKind.Filled => "was, by interpolation, below",
                _ => "was below",
            };
            yield return new(new("cool-after-planting", FindingWeight.Note, FormattableString.Invariant($"The {What(days, cold[0])} {below} 50 F within {hours} hours of planting ({cold[0]:yyyy-MM-dd}); {hours} hours above are advised (University of Nebraska).{AirNote(days, cold[0])}{(isCorn ? " Soil at 50 F or above at 4 inches and warming is advised for corn (Iowa State University)." : string.Empty)}")), days.KindOf(cold[0]));
        }
    }

    private static string What(ForecastDays days, DateOnly date) => days.IsSoilOn(date) ? "soil" : "air";

    private static string AirNote(ForecastDays days, DateOnly date) => days.IsSoilOn(date) ? string.Empty : " Air tells of the soil only roughly.";

    private static IEnumerable<PlantingCaution> Depth(bool isCorn, Length? depth)
    {
        var (least, most, source) = isCorn ? (1.5, 3.0, "value from memory") : (1.0, 1.5, "Ohio State University, tilled soil");
        if (depth is { } given && (given.Inches < least || given.Inches > most))
        {
            yield return new(new("planting-depth", FindingWeight.Caution, FormattableString.Invariant($"Planted {given.Inches:0.##} in deep; {least:0.#} to {most:0.#} in is advised ({source}).")), Kind: null);
        }
    }
}
