using TrialKit.Reporting.Document;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Sheets;

/// <summary>Lengths as a person with a wheel or a tape reads them.</summary>
internal static class LengthText
{
    private const int InchesPerFoot = 12;

    /// <summary>A distance along a strip: <c>212 ft</c>, <c>64.6 m</c>.</summary>
    public static string Distance(Length length, UnitSystem units) =>
        units == UnitSystem.Us ? $"{NumberText.Number(length.Feet, 0)} ft" : $"{NumberText.Number(length.Meters, 1)} m";

    /// <summary>A length of row on the tape: <c>17 ft 5 in</c>, <c>13.12 m</c>.</summary>
    public static string Row(Length length, UnitSystem units)
    {
        if (units == UnitSystem.Metric)
        {
            return $"{NumberText.Number(length.Meters, 2)} m";
        }

        var inches = (int)Math.Round(length.Inches, MidpointRounding.AwayFromZero);
        return inches % InchesPerFoot == 0
            ? $"{NumberText.Count(inches / InchesPerFoot)} ft"
            : $"{NumberText.Count(inches / InchesPerFoot)} ft {NumberText.Count(inches % InchesPerFoot)} in";
    }
}
