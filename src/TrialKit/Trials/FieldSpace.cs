using UnitsNet;

namespace TrialKit.Trials;

/// <summary>The room a trial has, and what is wanted in it, before strips are drawn.</summary>
public sealed record FieldSpace
{
    /// <summary>Length of the strips, along the rows; null when not given.</summary>
    public Length? Length { get; init; }

    /// <summary>Room across the rows; null when there is enough.</summary>
    public Length? Width { get; init; }

    /// <summary>Rows of the planter; null when not given.</summary>
    public int? PlanterRows { get; init; }

    /// <summary>Pairs or blocks wanted; null when not given.</summary>
    public int? Replicates { get; init; }

    /// <summary>Whole passes or halves of one.</summary>
    public StripShare Share { get; init; }

    /// <summary>Whether the planter is set up so that a treatment stays with one half of it in every pass.</summary>
    public bool SidesAreFixed { get; init; }

    /// <summary>Passes side by side in one strip, 1 or more.</summary>
    public int PassesPerStrip { get; init; } = 1;

    /// <summary>Passes left as a border on each side, 0 or more.</summary>
    public int BorderPasses { get; init; }

    /// <summary>Distance from one sprayer track to the next, the first lying half of it from the edge; null without tracks.</summary>
    public Length? TramlineSpacing { get; init; }

    /// <summary>Width of a sprayer track from wheel to wheel, tyres included.</summary>
    public Length TramlineWidth { get; init; } = UnitsNet.Length.FromFeet(10);

    /// <summary>Spots in each strip, 1 to 26.</summary>
    public int Spots { get; init; } = 4;

    /// <summary>Length of row at a spot; null for a thousandth of an acre or hectare.</summary>
    public Length? SpotLength { get; init; }

    /// <summary>How far spots stay from both ends of a strip.</summary>
    public Length EndMargin { get; init; } = UnitsNet.Length.FromFeet(60);

    /// <summary>Degrees north (WGS 84) of the corner from which strips are counted and measured; null when not given.</summary>
    public double? CornerLatitude { get; init; }

    /// <summary>Degrees east (WGS 84) of that corner; null when not given.</summary>
    public double? CornerLongitude { get; init; }

    /// <summary>Direction of the rows seen from that corner, in degrees from north over east; strips are counted to the right of it. Null when not given.</summary>
    public double? Bearing { get; init; }
}
