using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.EventTimes;

/// <summary>The standard distributions H(z) behind the shapes: logistic, normal, and the smallest-extreme-value distribution.</summary>
internal static class ShapeFunctions
{
    /// <summary>Slope s of z = s (ln t - ln e) from the shape's own b: b, or 1/b for the log-normal.</summary>
    public static double SlopeFromB(EventTimeShape shape, double b) => shape == EventTimeShape.LogNormal ? 1.0 / b : b;

    /// <summary>H(z).</summary>
    public static double Cdf(EventTimeShape shape, double z) => shape switch
    {
        EventTimeShape.LogLogistic => StableMath.Logistic(z),
        EventTimeShape.LogNormal => Normal.LowerTail(z),
        _ => -StableMath.ExpM1(-Math.Exp(z)),
    };

    /// <summary>1 - H(z).</summary>
    public static double UpperTail(EventTimeShape shape, double z) => shape switch
    {
        EventTimeShape.LogLogistic => StableMath.Logistic(-z),
        EventTimeShape.LogNormal => Normal.LowerTail(-z),
        _ => Math.Exp(-Math.Exp(z)),
    };

    /// <summary>The density h(z).</summary>
    public static double Density(EventTimeShape shape, double z) => shape switch
    {
        EventTimeShape.LogLogistic => StableMath.Logistic(z) * StableMath.Logistic(-z),
        EventTimeShape.LogNormal => Math.Exp(StableMath.LogNormalDensity(z)),
        _ => Math.Exp(z - Math.Exp(z)),
    };

    /// <summary>h'(z) / h(z).</summary>
    public static double DensityLogSlope(EventTimeShape shape, double z) => shape switch
    {
        EventTimeShape.LogLogistic => StableMath.Logistic(-z) - StableMath.Logistic(z),
        EventTimeShape.LogNormal => -z,
        _ => 1.0 - Math.Exp(z),
    };

    /// <summary>The z at which H(z) = p, for p strictly between 0 and 1.</summary>
    public static double Quantile(EventTimeShape shape, double p) => shape switch
    {
        EventTimeShape.LogLogistic => Math.Log(p) - Logs.OnePlus(-p),
        EventTimeShape.LogNormal => Normal.Quantile(p),
        _ => Math.Log(-Logs.OnePlus(-p)),
    };

    /// <summary>Mean of the standard distribution.</summary>
    public static double Mean(EventTimeShape shape) => shape == EventTimeShape.Weibull ? -0.57721566490153286 : 0.0;

    /// <summary>Standard deviation of the standard distribution.</summary>
    public static double StandardDeviation(EventTimeShape shape) => shape switch
    {
        EventTimeShape.LogLogistic => Math.PI / Math.Sqrt(3.0),
        EventTimeShape.LogNormal => 1.0,
        _ => Math.PI / Math.Sqrt(6.0),
    };
}
