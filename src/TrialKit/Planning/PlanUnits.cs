using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Planning;

/// <summary>The steps in which places along a strip are drawn and written: whole feet, or tenths of a metre.</summary>
/// <param name="Symbol">The unit as headers name it.</param>
/// <param name="Step">One step.</param>
internal sealed record PlanUnits(string Symbol, Length Step)
{
    private const int Decimals = 3;

    private static readonly PlanUnits Us = new("ft", Length.FromFeet(1));
    private static readonly PlanUnits Metric = new("m", Length.FromDecimeters(1));

    /// <summary>The steps of a unit system.</summary>
    public static PlanUnits Of(UnitSystem units) => units == UnitSystem.Us ? Us : Metric;

    /// <summary>A length in the unit, to the thousandth.</summary>
    public double Value(Length length) => Math.Round(Symbol == Us.Symbol ? length.Feet : length.Meters, Decimals);
}
