using TrialKit.Planning;
using TrialKit.Quantities;

namespace TrialKit.Export;

/// <summary>A plan as the tables of the trial folder.</summary>
public static class PlanTables
{
    /// <summary>The table <c>strips</c>.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">The units it is written in.</param>
    public static ResultTable Strips(TrialPlan plan, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var unit = PlanUnits.Of(units);
        return ResultTable.Of(
            "strips",
            "one strip",
            plan.Strips,
            ("strip", "name of the strip", strip => strip.Strip.Name),
            ("block", "pair or block", strip => strip.Strip.Block),
            ("treatment", "treatment drawn for it", strip => strip.Strip.Treatment.Name),
            ("order", "place across the field", strip => strip.Strip.Order!.Value),
            ($"length_{unit.Symbol}", "length", strip => unit.Value(plan.Length)),
            ($"width_{unit.Symbol}", "width", strip => unit.Value(strip.Width)),
            ("rows", "rows in the strip", strip => strip.Strip.Rows!.Value),
            ("left_out", "why it is left out, when it is", _ => null),
            ("note", "planter pass", strip => strip.Strip.Note));
    }

    /// <summary>The table <c>spots</c>.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">The units it is written in.</param>
    public static ResultTable Spots(TrialPlan plan, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var unit = PlanUnits.Of(units);
        return ResultTable.Of(
            "spots",
            "one place for counting",
            plan.Spots,
            ("strip", "name of the strip", place => place.Spot.Strip.Name),
            ("spot", "name of the spot", place => place.Spot.Name),
            ($"from_start_{unit.Symbol}", "distance from the near end of the strip", place => unit.Value(place.Spot.FromStart)),
            ("pass", "planter pass the row lies in, from the corner", place => place.Spot.Pass!.Value),
            ("planter_row", "row of the planter, from its left", place => place.Spot.PlanterRow!.Value),
            ($"length_{unit.Symbol}", "length of row to count", place => unit.Value(place.Spot.Row!.Value)));
    }
}
