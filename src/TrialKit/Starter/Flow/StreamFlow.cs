using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Starter.Flow;

/// <summary>The flow of one liquid at one placement, or of all liquids there together.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Liquids">The liquid at its placement; several are all that the treatment puts there, run through the same outlets.</param>
/// <param name="Settings">How the planter runs.</param>
/// <param name="PerRow">Flow of one row.</param>
/// <param name="Outlets">Flow of each outlet of a row: one, two alike where both sides get one, or as their sizes share it.</param>
/// <param name="Catches">Catch tests of one row, all its outlets together, by time.</param>
/// <param name="WaterFactor">How many times the liquid's flow water flows through the same orifice; null when the density is not known.</param>
public sealed record StreamFlow(
    Treatment Treatment,
    ImmutableArray<PlacedProduct> Liquids,
    FlowSettings Settings,
    VolumeFlow PerRow,
    ImmutableArray<VolumeFlow> Outlets,
    ImmutableArray<CatchTest> Catches,
    double? WaterFactor)
{
    private const double Faster = 1.25;

    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Flow of a row, orifice law and density correction",
        "Volume balance; orifice equation; density factors as printed by University of Nebraska extension",
        "docs/methods/flow.md");

    /// <summary>Where it goes.</summary>
    public Placement Placement => Liquids[0].Placement;

    /// <summary>Whether it is several liquids together.</summary>
    public bool IsTotal => Liquids.Length > 1;

    /// <summary>The product; of several their names together.</summary>
    public string Product => string.Join(" with ", Liquids.Select(placed => placed.Product.Name));

    /// <summary>All of it per area.</summary>
    public ApplicationRate Rate => ApplicationRate.FromLitresPerHectare(Liquids.Sum(placed => placed.Rate.PerHectare));

    /// <summary>Flow of water through the same outlets at the same pressure, for a calibration with water; null when the density is not known.</summary>
    public VolumeFlow? WaterPerRow => WaterFactor is { } factor ? VolumeFlow.FromLitersPerMinute(PerRow.LitersPerMinute * factor) : null;

    /// <summary>The pressure that a quarter more speed needs at the same rate; null when no pressure is given.</summary>
    public Pressure? PressureForQuarterMore => Settings.Pressure is { } now
        ? OrificeLaw.PressureFor(now, PerRow, VolumeFlow.FromLitersPerMinute(PerRow.LitersPerMinute * Faster))
        : null;

    /// <summary>The flows of every liquid of a review, placement by placement; where several liquids go to one, all of them together stand last.</summary>
    /// <param name="review">What is put where.</param>
    /// <param name="settings">How the planter runs.</param>
    public static ImmutableArray<StreamFlow> Of(StarterReview review, FlowSettings settings)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(settings);
        var lines =
            from treatment in review.Treatments
            from placement in treatment.Placements
            let liquids = placement.Products.Where(placed => placed.Rate is { IsVolume: true, PerHectare: > 0 }).ToImmutableArray()
            from line in liquids.Select(liquid => ImmutableArray.Create(liquid)).Concat(liquids.Length > 1 ? [liquids] : [])
            select Of(treatment.Treatment, line, review.Site.RowSpacing, settings);
        return [.. lines];
    }

    private static StreamFlow Of(Treatment treatment, ImmutableArray<PlacedProduct> liquids, Length spacing, FlowSettings settings)
    {
        var rate = ApplicationRate.FromLitresPerHectare(liquids.Sum(placed => placed.Rate.PerHectare));
        var flow = RowFlow.Of(rate, settings.Speed, spacing);
        var placement = liquids[0].Placement;
        IReadOnlyList<double> outlets = settings.Outlets.FirstOrDefault(row => row.Placement == placement)?.Coefficients ?? [.. Enumerable.Repeat(1.0, Placements.OutletsPerRow(placement))];
        return new(
            treatment,
            liquids,
            settings,
            flow,
            FlowSplit.Of(flow, outlets),
            [.. CatchTest.Times.Select(seconds => CatchTest.Of(flow, seconds))],
            DensityOf(liquids, rate) is { } density ? DensityCorrection.Factor(density) : null);
    }

    // Liquids that run together are weighed together; that their volumes add up is taken as given.
    private static Density? DensityOf(ImmutableArray<PlacedProduct> liquids, ApplicationRate rate) => liquids.All(placed => placed.Weight is not null)
        ? Density.FromKilogramsPerLiter(liquids.Sum(placed => placed.Weight!.Value.PerHectare) / rate.PerHectare)
        : null;
}
