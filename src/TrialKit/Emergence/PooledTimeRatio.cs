using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Emergence;

/// <summary>How much longer plants take with a treatment, from one curve fitted to all seeds with blocks and treatment moving its time.</summary>
/// <param name="LogRatio">Logarithm of the ratio of times, treatment over baseline, with the error of strips as clusters.</param>
/// <param name="SeedStandardError">The error if seeds were independent of each other, which they are not; null when the counts do not tell it.</param>
public sealed record PooledTimeRatio(TEstimate LogRatio, double? SeedStandardError)
{
    /// <summary>The ratio: below 1 when the treatment is sooner.</summary>
    public double Ratio => Math.Exp(LogRatio.Value);

    /// <summary>Its interval; null where its upper end is beyond any number.</summary>
    /// <param name="level">The level.</param>
    public Interval? IntervalAt(ConfidenceLevel level)
    {
        var log = LogRatio.IntervalAt(level);
        return double.IsPositiveInfinity(Math.Exp(log.High)) ? null : new(Math.Exp(log.Low), Math.Exp(log.High), level);
    }
}
