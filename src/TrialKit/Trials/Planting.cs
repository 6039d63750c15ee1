using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>How and when the trial was planted.</summary>
/// <param name="Date">The day; a strip may have its own.</param>
/// <param name="RowSpacing">Distance between rows, above zero.</param>
/// <param name="Seeds">Seeds dropped per area; null when not recorded.</param>
/// <param name="Depth">Depth aimed at; null when not recorded.</param>
/// <param name="Germination">Germination of the seed tag; null when not recorded.</param>
public sealed record Planting(DateOnly Date, Length RowSpacing, SeedingRate? Seeds, Length? Depth, Ratio? Germination)
{
    /// <summary>Speed of the planter, above zero; null when not recorded. It sets the flow of a liquid product.</summary>
    public Speed? Speed { get; init; }
}
