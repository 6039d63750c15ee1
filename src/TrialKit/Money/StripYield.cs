using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Money;

/// <summary>The yield of one strip.</summary>
/// <param name="Harvest">What was weighed.</param>
/// <param name="StandardMoisture">The moisture the yield is brought to, wet basis; null when the crop has none.</param>
/// <param name="Bushel">The crop's standard weight of a bushel; null when it has none.</param>
/// <param name="Yield">The yield at standard moisture; null when the area or the standard is not known.</param>
/// <param name="Findings">What a reader should know of it.</param>
public sealed record StripYield(StripHarvest Harvest, Ratio? StandardMoisture, Mass? Bushel, GrainYield? Yield, ImmutableArray<Finding> Findings)
{
    /// <summary>The strip.</summary>
    public Strip Strip => Harvest.Strip;

    /// <summary>The yield in bushels per acre or tonnes per hectare; null without a yield, and in bushels for a crop without a bushel.</summary>
    /// <param name="units">The units wanted.</param>
    public double? In(UnitSystem units) =>
        units == UnitSystem.Metric ? Yield?.TonnesPerHectare
        : Bushel is { } bushel ? Yield?.BushelsPerAcre(bushel)
        : null;
}
