using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Pairs;

/// <summary>A mean difference, judged by t, set against given values instead of zero.</summary>
internal static class AgainstValue
{
    /// <summary>
    /// The chance that the true difference lies above a value, F_t((mean - value) / se; df): the posterior of a normal mean
    /// under the flat prior 1 / sigma (Box and Tiao 1973, section 2.4).
    /// </summary>
    /// <param name="mean">Mean difference.</param>
    /// <param name="standardError">Its standard error, above 0.</param>
    /// <param name="df">Degrees of freedom.</param>
    /// <param name="value">The value to be exceeded.</param>
    public static double ProbabilityAbove(double mean, double standardError, double df, double value)
    {
        Checks.Finite(mean);
        Checks.Positive(standardError);
        Checks.Finite(value);
        return StudentT.LowerTail((mean - value) / standardError, df);
    }

    /// <summary>Two one-sided t tests (Schuirmann 1987): equivalent when the difference lies above the lower margin and below the upper.</summary>
    /// <param name="mean">Mean difference.</param>
    /// <param name="standardError">Its standard error, above 0.</param>
    /// <param name="df">Degrees of freedom.</param>
    /// <param name="lower">Lower margin, set beforehand.</param>
    /// <param name="upper">Upper margin, above the lower.</param>
    public static EquivalenceResult Equivalence(double mean, double standardError, double df, double lower, double upper)
    {
        Checks.Finite(mean);
        Checks.Positive(standardError);
        Checks.Finite(lower);
        Checks.Finite(upper);
        if (upper <= lower)
        {
            throw new ArgumentOutOfRangeException(
                nameof(upper), FormattableString.Invariant($"{upper} was found; a margin above the lower one, {lower}, was expected."));
        }

        var aboveLower = (mean - lower) / standardError;
        var aboveUpper = (mean - upper) / standardError;
        return new EquivalenceResult(
            aboveLower, StudentT.UpperTail(aboveLower, df), aboveUpper, StudentT.LowerTail(aboveUpper, df));
    }
}
