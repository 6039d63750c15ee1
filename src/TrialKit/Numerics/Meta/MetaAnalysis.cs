using System.Globalization;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Meta;

/// <summary>One effect measured at several sites, each with its variance: the mean effect and how it varies between sites.</summary>
/// <param name="Sites">Number of sites, k.</param>
/// <param name="Estimate">Weighted mean effect, weights 1/(v_i + tau2).</param>
/// <param name="BetweenVariance">Variance between sites, tau2, 0 or more.</param>
/// <param name="NormalStandardError">1/sqrt(sum w), as if tau2 were known.</param>
/// <param name="HartungKnappScale">sum w (y - mean)^2 / (k - 1), before it is kept from below 1.</param>
/// <param name="Q">Cochran's Q about the common-effect mean.</param>
/// <param name="Inconsistency">I2: share of the spread of the estimates that lies between sites, 0 to 1.</param>
/// <remarks>
/// Hartung and Knapp 2001, Statistics in Medicine 20:3875, with t on k - 1 degrees of freedom; the scale kept from below
/// 1 as Rover, Knapp and Friede 2015, BMC Med. Res. Methodol. 15:99, advise. I2 by Higgins and Thompson 2002.
/// </remarks>
internal sealed record MetaAnalysis(
    int Sites,
    double Estimate,
    double BetweenVariance,
    double NormalStandardError,
    double HartungKnappScale,
    double Q,
    double Inconsistency)
{
    /// <summary>k - 1: of Q and of t. Two sites leave 1.</summary>
    public int DegreesOfFreedom => Sites - 1;

    /// <summary>Chance of so large a Q when one effect is common to all sites.</summary>
    public double QProbability => ChiSquare.UpperTail(Q, DegreesOfFreedom);

    /// <summary>Standard error by Hartung and Knapp, its scale no less than 1.</summary>
    public double StandardError => NormalStandardError * Math.Sqrt(Math.Max(1, HartungKnappScale));

    /// <summary>Standard error by Hartung and Knapp as first published: smaller than the normal one when sites agree by chance.</summary>
    public double UnboundedStandardError => NormalStandardError * Math.Sqrt(HartungKnappScale);

    /// <summary>Whether the scale was raised to 1.</summary>
    public bool ScaleWasRaised => HartungKnappScale < 1;

    /// <summary>Estimate by standard error.</summary>
    public double T => Estimate / StandardError;

    /// <summary>Two-sided chance of so large a t on k - 1 degrees of freedom.</summary>
    public double P => 2 * StudentT.LowerTail(-Math.Abs(T), DegreesOfFreedom);

    /// <summary>Standard deviation of the effect at a site not yet seen: sqrt(tau2 + SE2); its t has k - 1 degrees of freedom.</summary>
    /// <remarks>Higgins, Thompson and Spiegelhalter 2009, JRSS A 172:137; k - 1 goes with the Hartung-Knapp error.</remarks>
    public double PredictionStandardDeviation => Math.Sqrt(BetweenVariance + (StandardError * StandardError));

    /// <summary>Interval of the mean effect.</summary>
    /// <param name="level">Confidence level, between 0 and 1.</param>
    /// <returns>Lower and upper bound.</returns>
    public (double Lower, double Upper) IntervalAt(double level) => Around(StandardError, level);

    /// <summary>Interval for the effect at a site not yet seen.</summary>
    /// <param name="level">Confidence level, between 0 and 1.</param>
    /// <returns>Lower and upper bound.</returns>
    public (double Lower, double Upper) PredictionIntervalAt(double level) => Around(PredictionStandardDeviation, level);

    /// <summary>Combines sites.</summary>
    /// <param name="estimates">Effect at each site, finite.</param>
    /// <param name="variances">Variance of each estimate, its squared standard error, above 0.</param>
    /// <param name="method">How tau2 is estimated.</param>
    /// <returns>The analysis.</returns>
    /// <exception cref="ArgumentException">Fewer than two sites, lengths differ, or a value out of its range.</exception>
    public static MetaAnalysis Of(ReadOnlySpan<double> estimates, ReadOnlySpan<double> variances, Heterogeneity method)
    {
        Checks.Sample(estimates, 2);
        if (variances.Length != estimates.Length)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{variances.Length} variances came with {estimates.Length} estimates; one for each was expected."), nameof(variances));
        }

        foreach (var variance in variances)
        {
            Checks.Positive(variance, nameof(variances));
        }

        // Shift and unit of the data are taken off first, so that neither costs digits.
        var unit = Math.Sqrt(variances.ToArray().Min());
        var shift = estimates[0];
        double[] y = [.. estimates.ToArray().Select(value => (value - shift) / unit)];
        double[] v = [.. variances.ToArray().Select(value => value / unit / unit)];
        var weighting = new SiteWeights(y, v);
        var between = weighting.BetweenVariance(method);
        var at = weighting.At(between);
        var common = weighting.At(0);
        var typical = (y.Length - 1) * common.Sum / ((common.Sum * common.Sum) - common.SumOfSquares);
        var share = method == Heterogeneity.Common
            ? Math.Max(0, 1 - ((y.Length - 1) / common.Q))
            : between / (between + typical);
        return new MetaAnalysis(
            y.Length,
            shift + (unit * at.Mean),
            between * unit * unit,
            unit / Math.Sqrt(at.Sum),
            at.Q / (y.Length - 1),
            common.Q,
            share);
    }

    private (double Lower, double Upper) Around(double error, double level)
    {
        Checks.OpenProbability(level);
        var half = StudentT.UpperQuantile((1 - level) / 2, DegreesOfFreedom) * error;
        return (Estimate - half, Estimate + half);
    }
}
