using TrialKit.Numerics.Distributions;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Emergence;

/// <summary>Intervals of times, which are above zero and skew: even on the log scale, by the delta method and the normal distribution.</summary>
internal static class LogInterval
{
    /// <summary>exp(ln T -+ z SE/T); null without a standard error.</summary>
    public static Interval? Of(double time, double? standardError, ConfidenceLevel level)
    {
        if (standardError is not { } error)
        {
            return null;
        }

        var reach = Math.Exp(Normal.UpperQuantile(level.Alpha / 2) * error / time);
        return new(time / reach, time * reach, level);
    }
}
