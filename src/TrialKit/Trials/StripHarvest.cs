using UnitsNet;

namespace TrialKit.Trials;

/// <summary>One strip weighed.</summary>
/// <param name="Strip">Which.</param>
/// <param name="Weight">Weight of grain as harvested.</param>
/// <param name="Moisture">Moisture as harvested, wet basis.</param>
/// <param name="Length">Length harvested; the strip's own when null.</param>
/// <param name="Width">Width harvested; the strip's own when null.</param>
/// <param name="TestWeight">Measured weight of a volume of grain, recorded and not used for yield; null when not recorded.</param>
public sealed record StripHarvest(Strip Strip, Mass Weight, Ratio Moisture, Length? Length, Length? Width, Density? TestWeight)
{
    /// <summary>The area weighed; null when a side is recorded neither here nor for the strip.</summary>
    public Area? HarvestedArea => (Length ?? Strip.Length) * (Width ?? Strip.Width);
}
