using System.Collections.Immutable;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Starter.Flow;

/// <summary>The flow of one liquid at one placement.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Placed">The liquid and its placement.</param>
/// <param name="Settings">How the planter runs.</param>
/// <param name="PerRow">Flow of one row.</param>
/// <param name="Outlets">Flow of each outlet of a row: one, two alike where both sides get one, or as their sizes share it.</param>
/// <param name="Catches">Catch tests of one row, all its outlets together, by time.</param>
/// <param name="WaterFactor">How many times the liquid's flow water flows through the same orifice; null when the density is not known.</param>
public sealed record StreamFlow(
    Treatment Treatment,
    PlacedProduct Placed,
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

    /// <summary>Flow of water through the same outlets at the same pressure, for a calibration with water; null when the density is not known.</summary>
    public VolumeFlow? WaterPerRow => WaterFactor is { } factor ? VolumeFlow.FromLitersPerMinute(PerRow.LitersPerMinute * factor) : null;

    /// <summary>The pressure that a quarter more speed needs at the same rate; null when no pressure is given.</summary>
    public Pressure? PressureForQuarterMore => Settings.Pressure is { } now
        ? OrificeLaw.PressureFor(now, PerRow, VolumeFlow.FromLitersPerMinute(PerRow.LitersPerMinute * Faster))
        : null;

    /// <summary>The flows of every liquid of a review.</summary>
    /// <param name="review">What is put where.</param>
    /// <param name="settings">How the planter runs.</param>
    public static ImmutableArray<StreamFlow> Of(StarterReview review, FlowSettings settings)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(settings);
        return [.. review.Liquids.Where(liquid => liquid.Placed.Rate.PerHectare > 0).Select(liquid => Of(liquid.Treatment, liquid.Placed, review.Site.RowSpacing, settings))];
    }

    private static StreamFlow Of(Treatment treatment, PlacedProduct placed, Length spacing, FlowSettings settings)
    {
        var flow = RowFlow.Of(placed.Rate, settings.Speed, spacing);
        double[] alike = [.. Enumerable.Repeat(1.0, Placements.OutletsPerRow(placed.Placement))];
        return new(
            treatment,
            placed,
            settings,
            flow,
            FlowSplit.Of(flow, settings.Outlets.IsEmpty ? alike : settings.Outlets),
            [.. CatchTest.Times.Select(seconds => CatchTest.Of(flow, seconds))],
            placed.Product.Density is { } density ? DensityCorrection.Factor(density) : null);
    }
}
