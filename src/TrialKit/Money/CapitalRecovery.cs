using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Money;

/// <summary>What a machine costs a year: the payment that returns its price with interest, less what it is worth at the end.</summary>
public static class CapitalRecovery
{
    /// <summary>The capital recovery factor r / (1 - (1 + r)^-n); 1/n without interest.</summary>
    /// <param name="interest">Interest a year, 0 or more.</param>
    /// <param name="years">Years, 1 or more.</param>
    public static double Factor(Ratio interest, int years)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(years, 1);
        var rate = Guard.NotNegative(interest.DecimalFractions, "interest", nameof(interest));
        return rate == 0 ? 1.0 / years : rate / -double.ExpM1(-years * double.LogP1(rate));
    }

    /// <summary>The cost a year: (price - salvage) x factor + salvage x interest.</summary>
    /// <param name="machine">The machine.</param>
    public static double PerYear(Machine machine)
    {
        ArgumentNullException.ThrowIfNull(machine);
        var price = Guard.Positive(machine.Price, "price of a machine", nameof(machine));
        var salvage = Guard.Between(machine.Salvage, 0, price, "salvage of a machine", nameof(machine));
        return ((price - salvage) * Factor(machine.Interest, machine.Years)) + (salvage * machine.Interest.DecimalFractions);
    }

    /// <summary>The cost per area, over the area it is used on in a year.</summary>
    /// <param name="machine">The machine.</param>
    public static MoneyPerArea PerArea(Machine machine) =>
        MoneyPerArea.FromPerHectare(PerYear(machine) / Guard.Positive(machine.AreaPerYear.Hectares, "area a year, ha", nameof(machine)), machine.Currency);
}
