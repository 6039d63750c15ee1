using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Money;

/// <summary>The costs of a treatment per area, line by line.</summary>
public static class TreatmentCosts
{
    /// <summary>The lines; none when nothing is stated.</summary>
    /// <param name="treatment">The treatment.</param>
    /// <param name="money">What an hour costs.</param>
    public static ImmutableArray<CostLine> Of(Treatment treatment, MoneySettings money)
    {
        ArgumentNullException.ThrowIfNull(treatment);
        ArgumentNullException.ThrowIfNull(money);
        return [.. Lines(treatment, money)];
    }

    private static IEnumerable<CostLine> Lines(Treatment treatment, MoneySettings money)
    {
        if (treatment.Cost is { } stated)
        {
            yield return new("stated", "as stated", stated);
        }

        if (treatment.Saved is { } saved)
        {
            yield return new("saved", "saved, as stated", MoneyPerArea.FromPerHectare(-saved.PerHectare, saved.Currency));
        }

        foreach (var product in treatment.Products)
        {
            if (product.Cost is { } cost)
            {
                yield return new("product", product.Name, cost);
            }
        }

        foreach (var machine in treatment.Machines)
        {
            yield return new("machine", machine.Name, CapitalRecovery.PerArea(machine));
        }

        if (treatment.HoursPerHectare is { } hours && money.WagePerHour is { } wage)
        {
            yield return new("time", "working time", MoneyPerArea.FromPerHectare(hours * wage, money.WageCurrency ?? string.Empty));
        }
    }
}
