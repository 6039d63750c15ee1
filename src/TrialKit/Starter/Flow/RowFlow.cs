using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Starter.Flow;

/// <summary>The flow that one row needs.</summary>
public static class RowFlow
{
    private const double MinutesPerHour = 60;

    /// <summary>Rate times the area that one row covers in a minute: gpm = gal/ac x mph x inches / 5940, L/min = L/ha x km/h x m / 600.</summary>
    /// <param name="rate">A volume per area.</param>
    /// <param name="speed">Ground speed, above zero.</param>
    /// <param name="spacing">Distance between rows, above zero.</param>
    /// <exception cref="ArgumentException">The rate is a weight.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Speed or spacing that is zero, negative, infinite or NaN.</exception>
    public static VolumeFlow Of(ApplicationRate rate, Speed speed, Length spacing)
    {
        if (!rate.IsVolume)
        {
            throw new ArgumentException($"The rate was {rate}; a volume per area was expected, since a weight does not flow.", nameof(rate));
        }

        var metresPerMinute = Guard.Positive(speed.MetersPerSecond, "speed, m/s", nameof(speed)) * MinutesPerHour;
        var hectaresPerMinute = metresPerMinute * Guard.Positive(spacing.Meters, "row spacing, m", nameof(spacing)) / Land.SquareMetresPerHectare;
        return VolumeFlow.FromLitersPerMinute(rate.PerHectare * hectaresPerMinute);
    }
}
