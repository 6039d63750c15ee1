using TrialKit.Numerics.Distributions;
using TrialKit.Quantities;

namespace TrialKit.Teaching;

/// <summary>What the tables at the end of a textbook hold: critical values and tails of the distributions that exercises use.</summary>
public static class PrintedTables
{
    /// <summary>The |t| that is passed with probability alpha when there is no true difference.</summary>
    /// <param name="degreesOfFreedom">Above zero.</param>
    /// <param name="alpha">The two tails together, above 0 and below 1.</param>
    public static double T(double degreesOfFreedom, double alpha)
    {
        Guard.Positive(degreesOfFreedom, "degrees of freedom");
        return StudentT.UpperQuantile(Inside(alpha) / 2, degreesOfFreedom);
    }

    /// <summary>The F that is passed with probability alpha when there is no true difference.</summary>
    /// <param name="numerator">Degrees of freedom of the effect, above zero.</param>
    /// <param name="denominator">Degrees of freedom of the error, above zero.</param>
    /// <param name="alpha">The upper tail, above 0 and below 1.</param>
    public static double F(double numerator, double denominator, double alpha)
    {
        Guard.Positive(numerator, "degrees of freedom");
        Guard.Positive(denominator, "degrees of freedom");
        return FisherF.UpperQuantile(Inside(alpha), numerator, denominator);
    }

    /// <summary>The z of the standard normal that leaves a probability above.</summary>
    /// <param name="upperTail">Above 0 and below 1.</param>
    public static double Z(double upperTail) => Normal.UpperQuantile(Inside(upperTail));

    /// <summary>The two-sided probability of a t.</summary>
    /// <param name="t">Any finite number.</param>
    /// <param name="degreesOfFreedom">Above zero.</param>
    public static Probability PofT(double t, double degreesOfFreedom) =>
        Probability.Of(2 * StudentT.LowerTail(-Math.Abs(Guard.Finite(t, "t")), Guard.Positive(degreesOfFreedom, "degrees of freedom")));

    /// <summary>The probability of an F at least this large.</summary>
    /// <param name="f">0 or more.</param>
    /// <param name="numerator">Degrees of freedom of the effect, above zero.</param>
    /// <param name="denominator">Degrees of freedom of the error, above zero.</param>
    public static Probability PofF(double f, double numerator, double denominator) => Probability.Of(FisherF.UpperTail(
        Guard.NotNegative(f, "F"), Guard.Positive(numerator, "degrees of freedom"), Guard.Positive(denominator, "degrees of freedom")));

    private static double Inside(double alpha) => alpha is > 0 and < 1
        ? alpha
        : throw new ArgumentOutOfRangeException(nameof(alpha), alpha, FormattableString.Invariant($"A tail of {alpha} was given; a number above 0 and below 1 was expected."));
}
