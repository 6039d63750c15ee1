using TrialKit.Heat;
using TrialKit.Quantities;

namespace TrialKit.Emergence;

/// <summary>Visits placed by the heat gathered since planting instead of by days.</summary>
/// <param name="Heat">Heat at each visit, rising.</param>
/// <param name="NewlyUp">Plants newly up at each.</param>
internal sealed record HeatVisits(double[] Heat, double[] NewlyUp)
{
    /// <summary>The visits; null when heat is not on record for each of them. Visits between which no heat gathered count as one.</summary>
    public static HeatVisits? Of(ReadOnlySpan<double> days, ReadOnlySpan<double> newlyUp, HeatClock clock, UnitSystem units)
    {
        var (heat, up) = (new List<double>(), new List<double>());
        for (var i = 0; i < days.Length; i++)
        {
            if (clock.HeatAt(days[i]) is not { } sum)
            {
                return null;
            }

            if (heat.Count > 0 && sum.In(units) <= heat[^1])
            {
                up[^1] += newlyUp[i];
                continue;
            }

            heat.Add(sum.In(units));
            up.Add(newlyUp[i]);
        }

        return new([.. heat], [.. up]);
    }
}
