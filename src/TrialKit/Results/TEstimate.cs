using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Pairs;
using TrialKit.Quantities;

namespace TrialKit.Results;

/// <summary>An estimate judged by Student's t: value, standard error and degrees of freedom; the rest follows.</summary>
/// <param name="Value">The estimate, in the unit.</param>
/// <param name="StandardError">Its standard error, above zero, in the unit.</param>
/// <param name="DegreesOfFreedom">Above zero.</param>
/// <param name="Replicates">Strips, pairs or blocks behind it.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Method">The procedure.</param>
public sealed record TEstimate(double Value, double StandardError, double DegreesOfFreedom, int Replicates, Unit Unit, Method Method)
{
    /// <summary>The estimate in standard errors.</summary>
    public double T => Value / StandardError;

    /// <summary>The two-sided probability of a t at least this far from zero when there is no true difference.</summary>
    public Probability PTwoSided => Probability.Of(2 * StudentT.LowerTail(-Math.Abs(T), DegreesOfFreedom));

    /// <summary>The interval of a level.</summary>
    public Interval IntervalAt(ConfidenceLevel level)
    {
        var half = StudentT.UpperQuantile(level.Alpha / 2, DegreesOfFreedom) * StandardError;
        return new(Value - half, Value + half, level);
    }

    /// <summary>The chance that the true value lies above a given one, F((estimate - value) / standard error): the posterior under a flat prior.</summary>
    /// <param name="value">The value to be exceeded, finite, in the unit.</param>
    /// <remarks>Box and Tiao 1973, Bayesian Inference in Statistical Analysis, section 2.4.</remarks>
    public Probability ProbabilityAbove(double value) => Probability.Of(AgainstValue.ProbabilityAbove(Value, StandardError, DegreesOfFreedom, value));

    /// <summary>Whether the interval of a level leaves out zero.</summary>
    public bool IsShownAt(ConfidenceLevel level) => PTwoSided.Value < level.Alpha;
}
