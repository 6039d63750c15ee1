using System.Globalization;
using TrialKit.Heat;
using TrialKit.Quantities;

namespace TrialKit.Export;

/// <summary>Heat units of a weather file as a table.</summary>
public static class HeatTables
{
    /// <summary>One day by one method a row.</summary>
    /// <param name="tallies">The same days by one method or more.</param>
    /// <param name="units">Whether degree-days are written in F-days or C-days; the column <c>unit</c> says which.</param>
    public static ResultTable Of(IEnumerable<HeatTally> tallies, UnitSystem units) => ResultTable.Of(
        "heat-units",
        "The heat units of a day by a method, and their sum.",
        tallies.SelectMany(tally => tally.Days, (tally, day) => (Tally: tally, Day: day)),
        ("method", "The method.", each => each.Tally.Method.Name),
        ("date", "The day.", each => each.Day.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        ("unit", "F-days or C-days, or CHU for crop heat units.", each => each.Tally.Unit(units)),
        ("heat", "Heat units of the day; empty when it is not on record.", each => each.Day.Units is { } heat ? each.Tally.In(heat, units) : null),
        ("sum", "Heat units of the days on record up to its end.", each => each.Tally.In(each.Day.Sum, units)),
        ("complete", "Whether no day is missing up to here; otherwise the sum is the least it can be.", each => each.Day.IsComplete),
        ("filled", "Whether temperatures of the day were interpolated.", each => each.Day.IsFilled));
}
