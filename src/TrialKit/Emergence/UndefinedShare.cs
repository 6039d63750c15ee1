using System.Collections.Immutable;
using System.Runtime.InteropServices;
using TrialKit.Numerics.EventTimes;

namespace TrialKit.Emergence;

/// <summary>A stretch of time in which the non-parametric curve rises without saying where: an innermost interval that holds mass (Turnbull 1976).</summary>
/// <param name="FromDays">Its beginning, days after planting.</param>
/// <param name="ToDays">Its end.</param>
/// <param name="LowShare">The share up at its beginning.</param>
/// <param name="HighShare">The share up at its end.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct UndefinedShare(double FromDays, double ToDays, double LowShare, double HighShare)
{
    // Less than this share of the seeds is rounding, not a rise.
    private const double LeastRise = 1e-9;

    /// <summary>The stretches of counts; those never seen up have no end and make none.</summary>
    internal static ImmutableArray<UndefinedShare> Of(IntervalCounts counts)
    {
        if (counts.Total == 0)
        {
            return [];
        }

        var estimate = Turnbull.Fit(counts);
        var stretches = ImmutableArray.CreateBuilder<UndefinedShare>();
        for (var i = 0; i < estimate.Mass.Length; i++)
        {
            if (estimate.Mass[i] > LeastRise && double.IsFinite(estimate.Right[i]))
            {
                stretches.Add(new(estimate.Left[i], estimate.Right[i], Math.Min(1, estimate.MassBefore(i)), Math.Min(1, estimate.MassBefore(i + 1))));
            }
        }

        return stretches.ToImmutable();
    }
}
