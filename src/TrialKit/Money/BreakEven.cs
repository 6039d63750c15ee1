using TrialKit.Quantities;

namespace TrialKit.Money;

/// <summary>The difference of yield that pays for its cost.</summary>
public static class BreakEven
{
    /// <summary>Net added cost over the net price; below zero when money is saved.</summary>
    /// <param name="cost">Net added cost per area.</param>
    /// <param name="price">Price net of hauling and drying.</param>
    /// <exception cref="ArgumentOutOfRangeException">No price.</exception>
    public static GrainYieldDifference Response(MoneyPerArea cost, GrainPrice price) => GrainYieldDifference.FromKilogramsPerHectare(
        cost.PerHectare / Guard.Positive(price.PerKilogram, "price per kilogram", nameof(price)));
}
