using System.Globalization;
using TrialKit.Heat;

namespace TrialKit.Export;

/// <summary>Heat units of a weather file as a table.</summary>
public static class HeatTables
{
    /// <summary>One day by one method a row.</summary>
    /// <param name="tallies">The same days by one method or more.</param>
    public static ResultTable Of(IEnumerable<HeatTally> tallies) => ResultTable.Of(
        "heat-units",
        "The heat units of a day by a method, and their sum.",
        tallies.SelectMany(tally => tally.Days, (tally, day) => (Tally: tally, Day: day)),
        ("method", "The method.", each => each.Tally.Method.Name),
        ("date", "The day.", each => each.Day.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        ("unit", "F-days, or CHU for crop heat units.", each => each.Tally.Unit(Quantities.UnitSystem.Us)),
        ("heat", "Heat units of the day; empty when it is not on record.", each => each.Day.Units),
        ("sum", "Heat units of the days on record up to its end.", each => each.Day.Sum),
        ("complete", "Whether no day is missing up to here; otherwise the sum is the least it can be.", each => each.Day.IsComplete),
        ("filled", "Whether temperatures of the day were interpolated.", each => each.Day.IsFilled));
}
