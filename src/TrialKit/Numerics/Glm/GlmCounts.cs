using System.Globalization;

namespace TrialKit.Numerics.Glm;

/// <summary>Counts of one family: their expectation, variance and deviance at a linear predictor.</summary>
internal sealed class GlmCounts
{
    private readonly GlmFamily _family;
    private readonly double[] _counts;
    private readonly double[] _sizes;

    private GlmCounts(GlmFamily family, double[] counts, double[] sizes) => (_family, _counts, _sizes) = (family, counts, sizes);

    /// <summary>Number of observations.</summary>
    public int Observations => _counts.Length;

    /// <summary>Whether every count is 0.</summary>
    public bool IsAllZero => Array.TrueForAll(_counts, count => count == 0);

    /// <summary>Whether every count of a binomial is its size.</summary>
    public bool IsAllFull => IsBinomial && _counts.SequenceEqual(_sizes);

    private bool IsBinomial => _family == GlmFamily.BinomialLogit;

    /// <summary>Checks counts.</summary>
    /// <param name="family">What is counted.</param>
    /// <param name="counts">Count of each observation.</param>
    /// <param name="sizes">Out of how many, or exposure.</param>
    /// <returns>The counts.</returns>
    /// <exception cref="ArgumentException">Lengths differ or a value is out of its range.</exception>
    public static GlmCounts Of(GlmFamily family, ReadOnlySpan<double> counts, ReadOnlySpan<double> sizes)
    {
        Checks.Sample(counts, 1);
        Checks.Sample(sizes, 1);
        if (counts.Length != sizes.Length)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{sizes.Length} sizes came with {counts.Length} counts; one for each was expected."), nameof(sizes));
        }

        for (var i = 0; i < counts.Length; i++)
        {
            var most = family == GlmFamily.BinomialLogit ? sizes[i] : double.MaxValue;
            if (counts[i] < 0 || counts[i] > most || sizes[i] <= 0)
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"Observation {i} counts {counts[i]} of size {sizes[i]}; a size above 0 and a count from 0{(family == GlmFamily.BinomialLogit ? " to its size" : " up")} were expected."),
                    nameof(counts));
            }
        }

        return new GlmCounts(family, counts.ToArray(), sizes.ToArray());
    }

    /// <summary>Where the iteration begins: counts moved half a unit off their bounds.</summary>
    /// <param name="columns">Columns of the design.</param>
    /// <returns>The state; its deviance is not comparable with later ones.</returns>
    public GlmStep Start(int columns)
    {
        var linear = new double[Observations];
        for (var i = 0; i < linear.Length; i++)
        {
            linear[i] = IsBinomial
                ? Math.Log((_counts[i] + 0.5) / (_sizes[i] - _counts[i] + 0.5))
                : Math.Log((_counts[i] + 0.5) / _sizes[i]);
        }

        return State(new double[columns], linear);
    }

    /// <summary>State at coefficients.</summary>
    /// <param name="design">The design.</param>
    /// <param name="coefficients">One per column.</param>
    /// <returns>The state.</returns>
    public GlmStep At(GlmDesign design, double[] coefficients) => State(coefficients, design.Predict(coefficients));

    /// <summary>Variance of a count, which is also its slope by the linear predictor under both canonical links.</summary>
    /// <param name="step">The state.</param>
    /// <param name="i">Observation.</param>
    /// <returns>The weight.</returns>
    public double Weight(GlmStep step, int i) => IsBinomial
        ? _sizes[i] * Share(step.Linear[i]) * Share(-step.Linear[i])
        : step.Expected[i];

    /// <summary>Count less its expectation.</summary>
    /// <param name="step">The state.</param>
    /// <param name="i">Observation.</param>
    /// <returns>The excess.</returns>
    public double Excess(GlmStep step, int i) => IsBinomial
        ? (_counts[i] * Share(-step.Linear[i])) - ((_sizes[i] - _counts[i]) * Share(step.Linear[i]))
        : _counts[i] - step.Expected[i];

    /// <summary>Sum of squared excess by variance.</summary>
    /// <param name="step">The state.</param>
    /// <returns>Pearson's chi-square; 0 when the excess is the rounding of the iteration.</returns>
    public double PearsonChiSquare(GlmStep step)
    {
        // An excess of 1e-10 of a count, squared and by a variance of at most the count.
        const double Rounding = 1e-20;
        var (sum, total) = (0.0, 0.0);
        for (var i = 0; i < Observations; i++)
        {
            sum += Excess(step, i) * Excess(step, i) / Weight(step, i);
            total += _counts[i];
        }

        return sum > Rounding * total ? sum : 0;
    }

    /// <summary>Whether some count on its bound is fitted as certain: the mark of a coefficient that runs to infinity.</summary>
    /// <param name="step">The state.</param>
    /// <returns>True when separated.</returns>
    public bool HasFittedBound(GlmStep step)
    {
        // A strip's expected share or count below this is beyond any field; a step lowers it by a factor e.
        const double Nothing = 1e-12;
        for (var i = 0; i < Observations; i++)
        {
            var zero = _counts[i] == 0 && (IsBinomial ? Share(step.Linear[i]) : step.Expected[i]) < Nothing;
            var full = IsBinomial && _counts[i] == _sizes[i] && Share(-step.Linear[i]) < Nothing;
            if (zero || full)
            {
                return true;
            }
        }

        return false;
    }

    private static double Share(double logit) => logit >= 0 ? 1 / (1 + Math.Exp(-logit)) : Math.Exp(logit) / (1 + Math.Exp(logit));

    // -log share, with its digits for shares near 1.
    private static double MinusLogShare(double logit) => logit >= 0 ? LogOnePlus(Math.Exp(-logit)) : LogOnePlus(Math.Exp(logit)) - logit;

    // Kahan's form of log(1 + x): the rounding of 1 + x is divided out.
    private static double LogOnePlus(double x)
    {
        var sum = 1 + x;
        return sum == 1 ? x : Math.Log(sum) * (x / (sum - 1));
    }

    private GlmStep State(double[] coefficients, double[] linear)
    {
        var expected = new double[linear.Length];
        var deviance = 0.0;
        for (var i = 0; i < linear.Length; i++)
        {
            expected[i] = _sizes[i] * (IsBinomial ? Share(linear[i]) : Math.Exp(linear[i]));
            deviance += IsBinomial
                ? Part(_counts[i], _sizes[i], -MinusLogShare(linear[i])) + Part(_sizes[i] - _counts[i], _sizes[i], -MinusLogShare(-linear[i]))
                : Part(_counts[i], _sizes[i], linear[i]) - (_counts[i] - expected[i]);
        }

        return new GlmStep(coefficients, linear, expected, 2 * deviance);
    }

    // y log(y / (m mu)), 0 for y = 0.
    private static double Part(double count, double size, double logShare) => count > 0 ? count * (Math.Log(count / size) - logShare) : 0;
}
