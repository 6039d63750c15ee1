namespace TrialKit.Numerics.Distributions;

/// <summary>
/// The noncentral t distribution, (Z + ncp) / S with S the scale of <see cref="ChiScale"/>. Each tail is an integral of
/// positive terms, so neither loses digits to the other however small it is; summing the beta series (Lenth 1989, AS 243) does.
/// </summary>
internal static class NoncentralT
{
    private const double Tolerance = 1e-13;

    /// <summary>P(T &lt;= t).</summary>
    /// <param name="t">Any finite number.</param>
    /// <param name="df">Degrees of freedom above 0, infinity included.</param>
    /// <param name="ncp">Noncentrality, finite.</param>
    public static double LowerTail(double t, double df, double ncp)
    {
        Checks.Finite(t);
        Checks.DegreesOfFreedom(df);
        Checks.Finite(ncp);
        return ncp == 0 ? StudentT.LowerTail(t, df) : ChiScale.Mean(s => Normal.LowerTail((t * s) - ncp), df, Tolerance).Value;
    }

    /// <summary>P(T &gt; t).</summary>
    public static double UpperTail(double t, double df, double ncp) => LowerTail(-t, df, -ncp);
}
