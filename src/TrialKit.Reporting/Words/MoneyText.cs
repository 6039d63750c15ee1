using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Words;

/// <summary>Money per area and per weight of grain as the trial writes it: <c>4.50 $/bu</c>.</summary>
/// <param name="units">The units that the trial prints.</param>
/// <param name="bushel">The crop's bushel; null when it has none, and prices are per tonne then.</param>
public sealed class MoneyText(UnitSystem units, UnitsNet.Mass? bushel)
{
    private bool InBushels => units == UnitSystem.Us && bushel is not null;

    /// <summary>The unit of money per area.</summary>
    public string AreaUnit(string currency) => $"{currency}/{(units == UnitSystem.Us ? "ac" : "ha")}";

    /// <summary>The unit of a price of grain.</summary>
    public string PriceUnit(string currency) => $"{currency}/{(InBushels ? "bu" : "t")}";

    /// <summary>Money per area as a number in that unit.</summary>
    public double Value(MoneyPerArea money) => units == UnitSystem.Us ? money.PerAcre : money.PerHectare;

    /// <summary>A price of grain as a number in that unit.</summary>
    public double Value(GrainPrice price) => InBushels ? price.PerBushel(bushel!.Value) : price.PerKilogram * 1000;

    /// <summary>Money per area: <c>18.00 $/ac</c>.</summary>
    public string Of(MoneyPerArea money) => $"{NumberText.Number(Value(money), 2)} {AreaUnit(money.Currency)}";

    /// <summary>A price of grain: <c>4.50 $/bu</c>.</summary>
    public string Of(GrainPrice price) => $"{NumberText.Number(Value(price), 2)} {PriceUnit(price.Currency)}";

    /// <summary>A response of yield: <c>4.0 bu/ac</c>.</summary>
    public string Of(GrainYieldDifference yield) => InBushels
        ? $"{NumberText.Number(yield.BushelsPerAcre(bushel!.Value), Math.Abs(yield.BushelsPerAcre(bushel!.Value)) < 1 ? 2 : 1)} bu/ac"
        : $"{NumberText.Number(yield.TonnesPerHectare, Math.Abs(yield.TonnesPerHectare) < 0.1 ? 3 : 2)} t/ha";
}
