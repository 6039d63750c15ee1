using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Comparison;

/// <summary>Brings a margin into the unit that its measure is printed in.</summary>
internal static class MarginUnits
{
    private const double CelsiusPerFahrenheit = 5.0 / 9;
    private const double CentimetresPerInch = 2.54;
    private static readonly double AcresPerHectare = 1 / Land.HectaresPerAcre;

    // One dictionary a dimension: the size of each unit in the first one.
    private static readonly Dictionary<string, double>[] Dimensions =
    [
        new(StringComparer.Ordinal) { ["plants/ha"] = 1, ["plants/ac"] = AcresPerHectare, ["plants/m2"] = Land.SquareMetresPerHectare },
        new(StringComparer.Ordinal) { ["d"] = 1, ["h"] = 1.0 / 24 },
        new(StringComparer.Ordinal) { ["C-days"] = 1, ["F-days"] = CelsiusPerFahrenheit },
        new(StringComparer.Ordinal) { ["cm"] = 1, ["m"] = 100, ["in"] = CentimetresPerInch, ["ft"] = 12 * CentimetresPerInch, ["yd"] = 36 * CentimetresPerInch },
        new(StringComparer.Ordinal) { ["t/ha"] = 1, ["kg/ha"] = 0.001, ["lb/ac"] = Mass.FromPounds(1).Tonnes * AcresPerHectare },
    ];

    /// <summary>The margin in a unit; null when it cannot be told in it.</summary>
    /// <param name="margin">The margin.</param>
    /// <param name="unit">The unit of the measure.</param>
    /// <param name="bushel">Weight of a bushel of the crop; null when it has none.</param>
    public static double? Convert(EquivalenceMargin margin, Unit unit, Mass? bushel)
    {
        if (Identifier.Same(margin.Unit, unit.Symbol))
        {
            return margin.Amount;
        }

        foreach (var dimension in Dimensions)
        {
            if (Size(dimension, margin.Unit, bushel) is { } from && Size(dimension, unit.Symbol, bushel) is { } to)
            {
                return margin.Amount * from / to;
            }
        }

        return null;
    }

    private static double? Size(Dictionary<string, double> dimension, string unit, Mass? bushel) =>
        unit == "bu/ac" && dimension.ContainsKey("t/ha") ? bushel?.Tonnes * AcresPerHectare
        : dimension.TryGetValue(unit, out var size) ? size
        : null;
}
