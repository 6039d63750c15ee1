using TrialKit.Numerics;
using TrialKit.Numerics.Power;

namespace TrialKit.Comparison;

/// <summary>How large a next trial of the same kind would have to be, from the spread that this one found.</summary>
/// <remarks>
/// Two-sided t by the noncentral t distribution. The error is that of whole replicates: the spread of differences in pairs, the error
/// mean square in blocks, whatever strips this trial lost. Each comparison keeps the level that the adjustment for several treatments left it.
/// </remarks>
public sealed class NextTrial
{
    /// <summary>The most replicates that are looked at.</summary>
    public const int Most = 500;

    private readonly ReplicateError error;
    private readonly double alpha;

    private NextTrial(ReplicateError error, double alpha) => (this.error, this.alpha) = (error, alpha);

    /// <summary>The next trial; null without a comparison that was tested.</summary>
    /// <param name="contrast">The comparison whose spread is taken.</param>
    public static NextTrial? After(Contrast contrast)
    {
        ArgumentNullException.ThrowIfNull(contrast);
        return contrast is { OfOneReplicate: { } error, OwnAlpha: { } alpha } ? new(error, alpha) : null;
    }

    /// <summary>The fewest pairs or blocks that would show a true difference with a chance of <see cref="Contrast.DetectablePower"/>.</summary>
    /// <param name="difference">The true difference, not 0, in the measure's unit.</param>
    /// <returns>Null where <see cref="Most"/> do not suffice.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The difference is 0, infinite or NaN.</exception>
    public int? Replicates(double difference)
    {
        Checks.Positive(Math.Abs(difference), nameof(difference));
        bool Suffices(int replicates) =>
            TTestPower.Power(Math.Abs(difference) / error.ErrorOf(replicates), error.DegreesOf(replicates), alpha, Rejection.TrueDirection) >= Contrast.DetectablePower;

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
