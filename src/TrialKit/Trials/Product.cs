using System.Collections.Immutable;
using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>A product put near the seed.</summary>
/// <param name="Name">Its name as printed.</param>
/// <param name="Placements">Where it was put, one or more; the shares sum to 1.</param>
/// <param name="Rate">How much of it was put on the area, all placements together.</param>
/// <param name="Density">Weight per volume, needed to weigh a volume rate; null when not given.</param>
/// <param name="Analysis">Its guaranteed analysis; null when not given.</param>
public sealed record Product(string Name, ImmutableArray<PlacedShare> Placements, ApplicationRate Rate, Density? Density, NutrientAnalysis? Analysis)
{
    /// <summary>The materials it was mixed from, as shares of its weight; empty when not given. What is missing to 1 is water or filler.</summary>
    public ImmutableArray<MixedShare> MadeFrom { get; init; } = [];

    /// <summary>What it costs; null when not given.</summary>
    public ProductPrice? Price { get; init; }

    /// <summary>Its cost per area; null without a price, and where the price is of a volume (or weight) that the rate does not give.</summary>
    public MoneyPerArea? Cost => Price is { } price && price.AmountOf(Rate, Density) is { } amount ? MoneyPerArea.FromPerHectare(amount, price.Currency) : null;
}
