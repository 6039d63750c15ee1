using TrialKit.Numerics.Pairs;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>Two one-sided tests against a margin that was set before the trial.</summary>
/// <param name="Margin">The margin on either side of zero, in the measure's unit.</param>
/// <param name="P">The larger of the two one-sided p, adjusted like the comparison's own when several treatments are compared.</param>
/// <param name="Above">The chance that the true difference lies above the margin.</param>
/// <param name="Below">The chance that the true difference lies below the margin taken negative.</param>
/// <param name="Method">The procedure.</param>
/// <remarks>Schuirmann 1987. Equivalence at alpha is the same as the interval of confidence 1 - 2 alpha inside the margin. The two chances are those of a flat prior.</remarks>
public sealed record Equivalence(double Margin, Probability P, Probability Above, Probability Below, Method Method)
{
    /// <summary>The interval of confidence 1 - 2 alpha, within the margins just where equivalence is shown; null at an alpha of a quarter or more.</summary>
    public Interval? Interval { get; init; }

    /// <summary>The tests.</summary>
    /// <param name="estimate">The difference.</param>
    /// <param name="margin">Above zero, in the measure's unit.</param>
    /// <param name="level">The level of the verdict.</param>
    /// <param name="familyP">The two-sided p of an absolute t as the comparison is judged.</param>
    /// <param name="critical">The absolute t whose p is twice alpha.</param>
    internal static Equivalence Of(TEstimate estimate, double margin, ConfidenceLevel level, Func<double, double> familyP, Func<double> critical)
    {
        var alone = AgainstValue.Equivalence(estimate.Value, estimate.StandardError, estimate.DegreesOfFreedom, -margin, margin);
        var nearest = Math.Min(alone.TLower, -alone.TUpper);

        // Outside the margin the one-sided p is beyond a half, whatever the adjustment.
        var p = nearest > 0 ? familyP(nearest) / 2 : alone.P;
        return new(margin, Probability.Of(Math.Max(p, alone.P)), estimate.ProbabilityAbove(margin), Probability.Of(1 - estimate.ProbabilityAbove(-margin).Value), Methods.Equivalence)
        {
            Interval = IntervalOf(estimate, level, critical),
        };
    }

    private static Interval? IntervalOf(TEstimate estimate, ConfidenceLevel level, Func<double> critical)
    {
        if (2 * level.Alpha >= ConfidenceLevel.AlphaLimit)
        {
            return null;
        }

        var half = critical() * estimate.StandardError;
        return new(estimate.Value - half, estimate.Value + half, ConfidenceLevel.FromAlpha(2 * level.Alpha));
    }
}
