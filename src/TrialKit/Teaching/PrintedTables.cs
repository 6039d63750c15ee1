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

    /// <summary>The |t| that any of several treatments passes against one control with probability alpha when nothing differs (Dunnett 1955, J. Am. Stat. Assoc. 50:1096-1121).</summary>
    /// <param name="control">Replicates of the control.</param>
    /// <param name="others">Replicates of each treatment, one or more.</param>
    /// <param name="degreesOfFreedom">Of the error, above zero.</param>
    /// <param name="alpha">Both sides together, above 0 and below 1.</param>
    public static double Dunnett(int control, ReadOnlySpan<int> others, double degreesOfFreedom, double alpha) =>
        Numerics.Distributions.Dunnett.CriticalValueTwoSided(Inside(alpha), control, others, Guard.Positive(degreesOfFreedom, "degrees of freedom"));

    /// <summary>The probability that any of several treatments lies at least |t| from one control when nothing differs.</summary>
    /// <param name="t">Any finite number.</param>
    /// <param name="control">Replicates of the control.</param>
    /// <param name="others">Replicates of each treatment, one or more.</param>
    /// <param name="degreesOfFreedom">Of the error, above zero.</param>
    public static Probability PofDunnett(double t, int control, ReadOnlySpan<int> others, double degreesOfFreedom) => Probability.Of(
        Numerics.Distributions.Dunnett.UpperTailTwoSided(Math.Abs(Guard.Finite(t, "t")), control, others, Guard.Positive(degreesOfFreedom, "degrees of freedom")));

    /// <summary>The studentized range that is passed with probability alpha when nothing differs.</summary>
    /// <param name="treatments">Two or more.</param>
    /// <param name="degreesOfFreedom">Of the error, above zero.</param>
    /// <param name="alpha">Above 0 and below 1.</param>
    public static double Range(int treatments, double degreesOfFreedom, double alpha) =>
        StudentizedRange.UpperQuantile(Inside(alpha), treatments, Guard.Positive(degreesOfFreedom, "degrees of freedom"));

    /// <summary>The probability of a studentized range at least this large.</summary>
    /// <param name="range">0 or more.</param>
    /// <param name="treatments">Two or more.</param>
    /// <param name="degreesOfFreedom">Of the error, above zero.</param>
    public static Probability PofRange(double range, int treatments, double degreesOfFreedom) => Probability.Of(
        StudentizedRange.UpperTail(Guard.NotNegative(range, "a range"), treatments, Guard.Positive(degreesOfFreedom, "degrees of freedom")));

    /// <summary>The z of the standard normal that leaves a probability above.</summary>
    /// <param name="upperTail">Above 0 and below 1.</param>
    public static double Z(double upperTail) => Normal.UpperQuantile(Inside(upperTail));

    /// <summary>The probability of a standard normal value above z.</summary>
    /// <param name="z">Any finite number.</param>
    public static Probability PofZ(double z) => Probability.Of(Normal.UpperTail(Guard.Finite(z, "z")));

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
