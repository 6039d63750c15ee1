using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Linear;
using TrialKit.Numerics.Power;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>The comparisons that are judged together, so that the chance of a false alarm among all of them stays at alpha.</summary>
/// <remarks>With strips missing the replication of each treatment is its number of strips, which is close (Hsu 1996, Multiple Comparisons, ch. 7; value from memory).</remarks>
internal sealed class ContrastFamily
{
    private readonly Func<double, double> tail;
    private readonly double degreesOfFreedom;

    // A search over a double integral, and not wanted by those who only ask for p.
    private readonly Lazy<double> criticalValue;
    private readonly Lazy<double> criticalValueOfBothSides;

    private ContrastFamily(Method method, double degreesOfFreedom, double alpha, Func<double, double> criticalValue, Func<double, double> tail)
    {
        (Method, this.degreesOfFreedom, this.tail) = (method, degreesOfFreedom, tail);
        this.criticalValue = new(() => criticalValue(alpha));
        criticalValueOfBothSides = new(() => criticalValue(2 * alpha));
    }

    /// <summary>The procedure.</summary>
    public Method Method { get; }

    /// <summary>The |t| beyond which a comparison is called different.</summary>
    public double CriticalValue => criticalValue.Value;

    /// <summary>The |t| of twice alpha: what each of two one-sided tests at alpha has to pass.</summary>
    public double CriticalValueOfBothSides => criticalValueOfBothSides.Value;

    /// <summary>Each treatment with the control: Dunnett's two-sided test.</summary>
    public static ContrastFamily AgainstControl(BlockAnova anova, int control, ConfidenceLevel level)
    {
        var degrees = anova.Error.DegreesOfFreedom;
        var (own, others) = (anova.Design.Replicates[control], anova.Design.Replicates.Where((_, index) => index != control).ToArray());
        return degrees == 0
            ? Untested(Methods.Dunnett)
            : new(
                Methods.Dunnett,
                degrees,
                level.Alpha,
                alpha => Dunnett.CriticalValueTwoSided(alpha, own, others, degrees),
                t => Dunnett.UpperTailTwoSided(t, own, others, degrees));
    }

    /// <summary>Every pair of treatments: Tukey's test, Kramer's form when replication is unequal.</summary>
    public static ContrastFamily AllPairs(BlockAnova anova, ConfidenceLevel level)
    {
        var degrees = anova.Error.DegreesOfFreedom;
        var treatments = anova.Design.Treatments;
        return degrees == 0
            ? Untested(Methods.Tukey)
            : new(
                Methods.Tukey,
                degrees,
                level.Alpha,
                alpha => StudentizedRange.UpperQuantile(alpha, treatments, degrees) / Math.Sqrt(2),
                t => StudentizedRange.UpperTail(t * Math.Sqrt(2), treatments, degrees));
    }

    /// <summary>The two-sided p of a comparison, adjusted for the family.</summary>
    /// <param name="t">The absolute t of the comparison.</param>
    public double P(double t) => Math.Min(1, tail(t));

    /// <summary>The true difference, in standard errors, that one comparison would show with a given chance.</summary>
    public double DetectableInErrors(double power) =>
        TTestPower.NoncentralityFor(power, degreesOfFreedom, 2 * StudentT.UpperTail(CriticalValue, degreesOfFreedom));

    private static ContrastFamily Untested(Method method) => new(method, 0, 0, _ => 0, _ => 1);
}
