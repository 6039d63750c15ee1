using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Linear;

/// <summary>Fisher's least significant difference: t times the standard error of a difference.</summary>
/// <remarks>Fisher 1935, The Design of Experiments, section 24. It guards one comparison; over more than three treatments not the family.</remarks>
internal static class LeastSignificantDifference
{
    /// <summary>The difference that just reaches the level, two-sided.</summary>
    /// <param name="standardError">Standard error of the difference, above zero.</param>
    /// <param name="degreesOfFreedom">Error degrees of freedom, above zero.</param>
    /// <param name="alpha">Two-sided level, between 0 and 1.</param>
    /// <returns>The difference, in the standard error's unit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static double Of(double standardError, double degreesOfFreedom, double alpha)
    {
        Checks.Positive(standardError);
        Checks.OpenProbability(alpha);
        return StudentT.UpperQuantile(alpha / 2, degreesOfFreedom) * standardError;
    }
}
