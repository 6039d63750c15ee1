using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Heat;

/// <summary>The published heat from planting to emergence of the built-in crops, and corn's adjustments for the field.</summary>
/// <remarks>
/// Corn: 90 to 120 F-days (Iowa State University), about 120, and 125 (University of Wisconsin), 100 to 120 (Nielsen 2020, Purdue).
/// Adjustments: Lauer 2003, University of Wisconsin, on a base of 125: 15 per inch below 2 inches, 30 to 60 for fine soil and as much less for coarse,
/// 30 for a dry seed zone, 30 to 60 for residue on more than 75 % of the ground. The source gives them one by one; together they are a range, and each is listed.
/// Adjustments that are printed as one figure (depth, a dry seed zone) move the published range, so that its spread is kept; where one is printed as a range
/// the source's 125 takes the place of the published range and the spread is that of the adjustments.
/// </remarks>
public static class HeatNeeds
{
    private const string Lauer = "Lauer 2003, University of Wisconsin";
    private const double CornLow = 90;
    private const double CornMid = 120;
    private const double CornHigh = 125;
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
            "SOYBEAN" => Plain(crop.Name, conditions, 90, 110, 130, "common practice, no source at hand: 90 to 130"),
            "COTTON" => Plain(crop.Name, conditions, 50, 50, 50, "North Carolina State University Extension: 50 DD60"),
            "SORGHUM" => Plain(crop.Name, conditions, 126, 126, 126, "USDA Foreign Agricultural Service: 126"),
            "WHEAT" => Wheat(conditions),
            _ => null,
        };
    }

    /// <summary>The need of a trial: its own, counted by its own method, or the published one of its crop.</summary>
    public static HeatNeed? Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return Of(trial.Crop, trial.Heat.Method, trial.Forecast, "trial.toml");
    }

    /// <summary>The need that settings give, or the published one of the crop.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="method">How heat is counted towards a need that is given.</param>
    /// <param name="settings">The settings.</param>
    /// <param name="givenBy">Where a need that is given stands.</param>
    /// <returns>Null when none is given and none is published here for the crop.</returns>
    public static HeatNeed? Of(Crop crop, HeatMethod method, ForecastSettings settings, string givenBy)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return settings.Need is { } own
            ? new(own, method, givenBy, []) { IsGiven = true, Unused = Unused(settings.Conditions) }
            : Of(crop, settings.Conditions);
    }

    private static HeatNeed Corn(FieldConditions conditions)
    {
        ImmutableArray<NeedAdjustment> adjustments = [.. CornAdjustments(conditions)];
        const string Published = "Iowa State University: 90 to 120; University of Wisconsin: about 120, and 125; Nielsen 2020, Purdue University: 100 to 120";
        var (least, most) = (adjustments.Sum(each => each.LowFahrenheitDays), adjustments.Sum(each => each.HighFahrenheitDays));
        if (least == most)
        {
            return new(Range(CornLow + least, CornMid + least, CornHigh + least), HeatMethods.Corn, adjustments.IsEmpty ? Published : $"{Published}; the range is moved by the adjustment", adjustments);
        }

        var low = Math.Max(0, CornHigh + least);
        var high = Math.Max(low, CornHigh + most);
        return new(Range(low, 0.5 * (low + high), high), HeatMethods.Corn, $"{Lauer}: 125 before adjustment, in place of the published range of 90 to 125", adjustments);
    }

    private static ImmutableArray<string> Unused(FieldConditions conditions) => [.. CornAdjustments(conditions).Select(each => each.Condition)];

    private static IEnumerable<NeedAdjustment> CornAdjustments(FieldConditions conditions)
    {
        if (conditions.Depth is { } depth && depth.Inches > ShallowInches)
        {
            var more = PerInch * (depth.Inches - ShallowInches);
            yield return new(FormattableString.Invariant($"planted {depth.Inches:0.##} in deep"), more, more, $"{Lauer}: 15 for each inch below 2");
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
            [])
        {
            Unused = Unused(conditions with { Depth = null }),
        };
    }

    private static HeatNeed Plain(string crop, FieldConditions conditions, double low, double mid, double high, string source) =>
        new(Range(low, mid, high), MethodOf(crop), source, []) { Unused = Unused(conditions) };

    private static HeatMethod MethodOf(string crop) => CropTable.Find(crop)!.Heat;

    private static HeatRange Range(double low, double mid, double high) =>
        new(HeatSum.FromFahrenheitDays(low), HeatSum.FromFahrenheitDays(mid), HeatSum.FromFahrenheitDays(high));
}
