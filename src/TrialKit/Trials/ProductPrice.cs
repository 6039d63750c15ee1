using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>The price of a product: money per volume or per weight.</summary>
/// <param name="Amount">Per litre of a volume, per kilogram of a weight; 0 or more.</param>
/// <param name="IsPerVolume">Whether it is a price per volume.</param>
/// <param name="Currency">As written.</param>
public sealed record ProductPrice(double Amount, bool IsPerVolume, string Currency)
{
    /// <summary>What a rate costs per hectare; null when volume and weight must be converted and the density is not known.</summary>
    /// <param name="rate">The rate.</param>
    /// <param name="density">Weight per volume, where known.</param>
    public double? AmountOf(ApplicationRate rate, Density? density)
    {
        if (rate.IsVolume == IsPerVolume)
        {
            return Amount * rate.PerHectare;
        }

        return density is not { } known ? null
            : IsPerVolume ? Amount * rate.PerHectare / known.KilogramsPerLiter
            : Amount * rate.PerHectare * known.KilogramsPerLiter;
    }
}
