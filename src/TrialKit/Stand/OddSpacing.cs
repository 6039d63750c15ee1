using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Stand;

/// <summary>A gap that is not one seed spacing, and where it is.</summary>
/// <param name="Kind">A multiple or a missed place.</param>
/// <param name="Before">The plant at its beginning, in the order of the tape.</param>
/// <param name="After">The plant at its end.</param>
/// <param name="Gap">Its length.</param>
/// <param name="SeedSpacings">Its length in seed spacings.</param>
public sealed record OddSpacing(SpacingKind Kind, Plant Before, Plant After, Length Gap, double SeedSpacings)
{
    /// <summary>The spot.</summary>
    public string Spot => Before.Spot;
}
