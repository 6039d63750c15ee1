using TrialKit.Quantities;

namespace TrialKit.Money;

/// <summary>What a difference is worth at one price and one cost, money per hectare.</summary>
/// <param name="Price">Net price of grain.</param>
/// <param name="Cost">Net added cost.</param>
/// <param name="BreakEven">The difference that pays for it.</param>
/// <param name="Net">What the difference found earns above its cost.</param>
/// <param name="Low">The same at the lower end of the yield interval; null when there is none.</param>
/// <param name="High">The same at the upper end; null when there is none.</param>
/// <param name="Pays">The chance that the true difference pays; null when it cannot be said.</param>
/// <param name="PaysWithMargin">The chance that it pays with the margin; null when it cannot be said.</param>
public sealed record MoneyPoint(
    GrainPrice Price,
    MoneyPerArea Cost,
    GrainYieldDifference BreakEven,
    MoneyPerArea Net,
    MoneyPerArea? Low,
    MoneyPerArea? High,
    Probability? Pays,
    Probability? PaysWithMargin)
{
    /// <summary>The point of one price and one cost.</summary>
    /// <param name="response">The difference of yield.</param>
    /// <param name="price">Net price.</param>
    /// <param name="cost">Net added cost.</param>
    /// <param name="margin">The margin as a share of the cost; a saving has none to be raised by.</param>
    internal static MoneyPoint Of(YieldResponse response, GrainPrice price, MoneyPerArea cost, double margin)
    {
        var breakEven = Money.BreakEven.Response(cost, price);
        var withMargin = breakEven.KilogramsPerHectare + (margin * Math.Max(0, breakEven.KilogramsPerHectare));
        return new(
            price,
            cost,
            breakEven,
            Worth(response.Difference.KilogramsPerHectare),
            response.Low is { } low ? Worth(low) : null,
            response.High is { } high ? Worth(high) : null,
            Chance(breakEven.KilogramsPerHectare),
            Chance(withMargin));

        MoneyPerArea Worth(double kilograms) => MoneyPerArea.FromPerHectare((kilograms * price.PerKilogram) - cost.PerHectare, price.Currency);

        Probability? Chance(double value) => ChanceOfPaying.Above(response.Difference.KilogramsPerHectare, response.StandardError, response.DegreesOfFreedom, value);
    }
}
