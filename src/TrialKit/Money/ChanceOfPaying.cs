using TrialKit.Numerics.Pairs;
using TrialKit.Quantities;

namespace TrialKit.Money;

/// <summary>The chance that the true difference of yield is above what pays for it.</summary>
/// <remarks>
/// F_t((difference - break-even) / standard error; df): a flat prior, this field and this year only, the price taken as known.
/// The paired form of Munkvold et al. 2001, Phytopathology 91:477-484.
/// </remarks>
internal static class ChanceOfPaying
{
    /// <summary>The chance; 0 or 1 when every pair gave the same difference, null when there is nothing to judge by.</summary>
    /// <param name="difference">The difference.</param>
    /// <param name="standardError">Its standard error, 0 when nothing varied; null when there is none.</param>
    /// <param name="degreesOfFreedom">Its degrees of freedom.</param>
    /// <param name="value">What must be exceeded.</param>
    public static Probability? Above(double difference, double? standardError, double degreesOfFreedom, double value) => standardError switch
    {
        null => null,
        0 => Probability.Of(difference > value ? 1 : 0),
        { } error => Probability.Of(AgainstValue.ProbabilityAbove(difference, error, degreesOfFreedom, value)),
    };
}
