namespace TrialKit.Trials;

/// <summary>Where a starter is put in relation to the seed: the placements of the trade (common practice, no source).</summary>
public enum Placement
{
    /// <summary>In the seed furrow, with the seed (<c>in-furrow</c>).</summary>
    InFurrow,

    /// <summary>A band two inches beside and two inches below the seed (<c>2x2</c>).</summary>
    BesideAndBelow,

    /// <summary>A surface band two inches beside the row (<c>2x0</c>).</summary>
    BesideOnSurface,

    /// <summary>Bands two inches beside and below on both sides (<c>2x2x2</c>).</summary>
    BesideAndBelowBothSides,

    /// <summary>A stream on the soil surface near the row (<c>dribble</c>).</summary>
    SurfaceDribble,
}
