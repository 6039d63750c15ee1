using TrialKit.Numerics.Distributions;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Emergence;

/// <summary>Intervals of times, which are above zero and skew: even on the log scale, by the delta method and the normal distribution.</summary>
internal static class LogInterval
{
    // Wider than a hundredfold either way an interval says nothing of a time.
    private const double MostReach = 100;

    /// <summary>exp(ln T -+ z SE/T); null without a standard error, and where it reaches beyond a hundredth or a hundredfold of the time.</summary>
    public static Interval? Of(double time, double? standardError, ConfidenceLevel level)
    {
        if (standardError is not { } error)
        {
            return null;
        }

        var reach = Math.Exp(Normal.UpperQuantile(level.Alpha / 2) * error / time);
        return reach > MostReach ? null : new(time / reach, time * reach, level);
    }
}
