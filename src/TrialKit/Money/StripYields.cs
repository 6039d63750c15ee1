using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Money;

/// <summary>Yield of each strip weighed, at the crop's standard moisture.</summary>
/// <remarks>
/// Weight over area times (100 - moisture)/(100 - standard moisture), in bushels of the standard weight, never of the measured test weight.
/// An elevator's shrink factor is another thing: it takes off more than the water.
/// </remarks>
public static class StripYields
{
    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Grain yield at standard moisture",
        "U.S. bushel weights and standard moistures as printed in extension tables; dry matter is kept, water is not",
        "docs/methods/yield.md");

    /// <summary>The yields, in the order of the strips.</summary>
    /// <param name="trial">The trial; strips that were not weighed are not listed.</param>
    public static ImmutableArray<StripYield> Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var harvests = trial.Harvests.ToDictionary(harvest => harvest.Strip.Name, Identifier.Comparer);
        return [.. trial.Strips
            .Where(strip => harvests.ContainsKey(strip.Name))
            .Select(strip => Of(harvests[strip.Name], trial.Crop))];
    }

    private static StripYield Of(StripHarvest harvest, Crop crop)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var area = harvest.HarvestedArea;
        if (area is null)
        {
            findings.Add(new("yield-no-area", FindingWeight.Serious, "The strip was weighed, but its length or width is not recorded, so there is no yield per area.", harvest.Strip.Name));
        }

        if (crop.StandardMoisture is null)
        {
            findings.Add(new("yield-no-standard-moisture", FindingWeight.Serious, $"No standard moisture is known for {crop.Name}, so weights at different moistures cannot be compared and there is no yield.", harvest.Strip.Name));
        }

        GrainYield? yield = area is { } known && crop.StandardMoisture is { } standard
            ? GrainYield.FromStrip(harvest.Weight, known, harvest.Moisture, standard)
            : null;
        return new(harvest, crop.StandardMoisture, crop.Bushel, yield, findings.ToImmutable());
    }
}
