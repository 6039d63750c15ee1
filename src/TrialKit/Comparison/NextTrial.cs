using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Power;

namespace TrialKit.Comparison;

/// <summary>How large a next trial of the same kind would have to be, from the spread that this one found.</summary>
/// <remarks>
/// Two-sided t by the noncentral t distribution. The standard error falls with the root of the replicates, the degrees of freedom
/// grow with replicates less one, and each comparison keeps the level that the adjustment for several treatments left it. With strips missing it is close.
/// </remarks>
public static class NextTrial
{
    /// <summary>The most replicates that are looked at.</summary>
    public const int Most = 500;

    /// <summary>The fewest pairs or blocks that would show a true difference with a chance of <see cref="Contrast.DetectablePower"/>.</summary>
    /// <param name="contrast">The comparison whose spread is taken.</param>
    /// <param name="difference">The true difference, not 0, in the measure's unit.</param>
    /// <returns>Null without an estimate from two replicates or more, and where <see cref="Most"/> do not suffice.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The difference is 0, infinite or NaN.</exception>
    public static int? Replicates(Contrast contrast, double difference)
    {
        ArgumentNullException.ThrowIfNull(contrast);
        Checks.Positive(Math.Abs(difference), nameof(difference));
        if (contrast is not { Estimate: { Replicates: > 1 } estimate, Interval: { } interval })
        {
            return null;
        }

        var critical = (interval.High - interval.Low) / 2 / estimate.StandardError;
        var level = 2 * StudentT.UpperTail(critical, estimate.DegreesOfFreedom);
        bool Suffices(int replicates) => TTestPower.Power(
            Math.Abs(difference) / (estimate.StandardError * Math.Sqrt((double)estimate.Replicates / replicates)),
            estimate.DegreesOfFreedom * (replicates - 1) / (estimate.Replicates - 1),
            level,
            Rejection.TrueDirection) >= Contrast.DetectablePower;

        // Power grows with replicates: the fewest that suffice lie above the most that do not.
        var (tooFew, enough) = (1, Most);
        if (!Suffices(enough))
        {
            return null;
        }

        while (enough - tooFew > 1)
        {
            var middle = (tooFew + enough) / 2;
            (tooFew, enough) = Suffices(middle) ? (tooFew, middle) : (middle, enough);
        }

        return enough;
    }
}
