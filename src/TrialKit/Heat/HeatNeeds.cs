using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Heat;

/// <summary>The published heat from planting to emergence of the built-in crops, and corn's adjustments for the field.</summary>
/// <remarks>
/// Corn: 90 to 120 F-days (Iowa State University), about 120, and 125 (University of Wisconsin), 100 to 120 (Nielsen 2020, Purdue).
/// Adjustments: Lauer 2003, University of Wisconsin, on a base of 125: 15 per inch below 2 inches, 30 to 60 for fine soil and as much less for coarse,
/// 30 for a dry seed zone, 30 to 60 for residue on more than 75 % of the ground. The source gives them one by one; together they are a range, and each is listed.
/// </remarks>
public static class HeatNeeds
{
    private const string Lauer = "Lauer 2003, University of Wisconsin";
    private const double WisconsinBase = 125;
    private const double ShallowInches = 2;
    private const double PerInch = 15;
    private const double LeastResidue = 75;
    private const double WheatGerminationCelsius = 80;
    private const double WheatPerInchCelsius = 50;
    private const double WheatInches = 1.5;

    /// <summary>The need of a crop in a field.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="conditions">The field's conditions.</param>
    /// <returns>Null when none is published here for the crop: a need of one's own is then to be given.</returns>
    public static HeatNeed? Of(Crop crop, FieldConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(crop);
        ArgumentNullException.ThrowIfNull(conditions);
        return crop.Name.ToUpperInvariant() switch
        {
            "CORN" => Corn(conditions),
            "SOYBEAN" => Plain(crop.Name, 90, 110, 130, "extension tables: 90 to 130"),
            "COTTON" => Plain(crop.Name, 50, 50, 50, "North Carolina State University Extension: 50 DD60"),
            "SORGHUM" => Plain(crop.Name, 126, 126, 126, "USDA Foreign Agricultural Service: 126"),
            "WHEAT" => Wheat(conditions),
            _ => null,
        };
    }

    /// <summary>The need of a trial: its own, counted by its own method, or the published one of its crop.</summary>
    public static HeatNeed? Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return trial.Forecast.Need is { } own
            ? new(own, trial.Heat.Method, "trial.toml", [])
            : Of(trial.Crop, trial.Forecast.Conditions);
    }

    private static HeatNeed Corn(FieldConditions conditions)
    {
        ImmutableArray<NeedAdjustment> adjustments = [.. CornAdjustments(conditions)];
        if (adjustments.IsEmpty)
        {
            return new(Range(90, 120, 125), HeatMethods.Corn, "Iowa State University: 90 to 120; University of Wisconsin: about 120, and 125; Nielsen 2020, Purdue University: 100 to 120", adjustments);
        }

        var low = Math.Max(0, WisconsinBase + adjustments.Sum(each => each.LowFahrenheitDays));
        var high = Math.Max(low, WisconsinBase + adjustments.Sum(each => each.HighFahrenheitDays));
        return new(Range(low, 0.5 * (low + high), high), HeatMethods.Corn, $"{Lauer}: 125 before adjustment", adjustments);
    }

    private static IEnumerable<NeedAdjustment> CornAdjustments(FieldConditions conditions)
    {
        if (conditions.Depth is { } depth && depth.Inches > ShallowInches)
        {
            var more = PerInch * (depth.Inches - ShallowInches);
            yield return new(FormattableString.Invariant($"planted {depth.Inches:0.##} in deep: 15 for each inch below 2"), more, more, Lauer);
        }

        if (conditions.Texture == SoilTexture.Fine)
        {
            yield return new("fine soil", 30, 60, Lauer);
        }

        if (conditions.Texture == SoilTexture.Coarse)
        {
            yield return new("coarse soil", -60, -30, Lauer);
        }

        if (conditions.DrySeedZone)
        {
            yield return new("dry seed zone", 30, 30, Lauer);
        }

        if (conditions.Residue is { } residue && residue.Percent > LeastResidue)
        {
            yield return new(FormattableString.Invariant($"residue on {residue.Percent:0.#} % of the ground, which is over 75 %"), 30, 60, Lauer);
        }
    }

    private static HeatNeed Wheat(FieldConditions conditions)
    {
        var inches = conditions.Depth?.Inches ?? WheatInches;
        var need = HeatSum.FromCelsiusDays(WheatGerminationCelsius + (WheatPerInchCelsius * inches));
        return new(
            new HeatRange(need, need, need),
            MethodOf("wheat"),
            FormattableString.Invariant($"80 C-days to germinate and 50 an inch, at {inches:0.##} in{(conditions.Depth is null ? ", a depth taken for want of one" : string.Empty)}; value from memory"),
            []);
    }

    private static HeatNeed Plain(string crop, double low, double mid, double high, string source) => new(Range(low, mid, high), MethodOf(crop), source, []);

    private static HeatMethod MethodOf(string crop) => CropTable.Find(crop)!.Heat;

    private static HeatRange Range(double low, double mid, double high) =>
        new(HeatSum.FromFahrenheitDays(low), HeatSum.FromFahrenheitDays(mid), HeatSum.FromFahrenheitDays(high));
}
