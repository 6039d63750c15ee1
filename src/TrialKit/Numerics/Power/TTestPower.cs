using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Power;

/// <summary>The power of a two-sided t test by the noncentral t distribution.</summary>
internal static class TTestPower
{
    /// <summary>The chance of rejection.</summary>
    /// <param name="ncp">True difference over its standard error, 0 or more.</param>
    /// <param name="df">Degrees of freedom of the error.</param>
    /// <param name="alpha">Two-sided level.</param>
    /// <param name="rejection">Which rejections count.</param>
    public static double Power(double ncp, double df, double alpha, Rejection rejection)
    {
        Checks.Finite(ncp);
        Checks.OpenProbability(alpha);
        if (ncp < 0)
        {
            throw new ArgumentOutOfRangeException(
                nameof(ncp), FormattableString.Invariant($"{ncp} was found; 0 or more was expected, the size of the difference."));
        }

        var critical = StudentT.UpperQuantile(alpha / 2, df);
        var right = NoncentralT.UpperTail(critical, df, ncp);
        return rejection == Rejection.TrueDirection ? right : right + NoncentralT.LowerTail(-critical, df, ncp);
    }

    /// <summary>The true difference over its standard error at which the test, counting the true direction, has the power asked.</summary>
    /// <param name="power">Above alpha / 2, where every difference already lies, and below 1.</param>
    /// <param name="df">Degrees of freedom of the error.</param>
    /// <param name="alpha">Two-sided level.</param>
    public static double NoncentralityFor(double power, double df, double alpha)
    {
        Checks.OpenProbability(power);
        Checks.OpenProbability(alpha);
        if (power <= alpha / 2)
        {
            throw new ArgumentOutOfRangeException(
                nameof(power), FormattableString.Invariant($"{power} was found; more than half the level, {alpha / 2}, was expected."));
        }

        var critical = StudentT.UpperQuantile(alpha / 2, df);
        return power >= 0.5
            ? QuantileSearch.Falling(ncp => NoncentralT.LowerTail(critical, df, ncp), 1 - power, critical, Precision)
            : QuantileSearch.Rising(ncp => NoncentralT.UpperTail(critical, df, ncp), power, critical);
    }

    // The noncentral tails are good to about 1e-13.
    private const double Precision = 1e-13;
}
