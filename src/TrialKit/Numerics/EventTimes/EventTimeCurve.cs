using System.Globalization;

namespace TrialKit.Numerics.EventTimes;

/// <summary>F(t) = d F0(t): the share of sown seeds up by time t.</summary>
internal readonly record struct EventTimeCurve
{
    /// <summary>A curve from its parameters.</summary>
    /// <param name="shape">The shape of F0.</param>
    /// <param name="d">Share that ever emerges, in (0, 1].</param>
    /// <param name="b">The shape's own b, above 0.</param>
    /// <param name="e">Location, above 0, in the unit of time.</param>
    /// <exception cref="ArgumentOutOfRangeException">A parameter is outside its range.</exception>
    public EventTimeCurve(EventTimeShape shape, double d, double b, double e)
    {
        if (!(d is > 0.0 and <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(d), d, "Found a share outside (0, 1].");
        }

        if (!(b > 0.0) || double.IsPositiveInfinity(b))
        {
            throw new ArgumentOutOfRangeException(nameof(b), b, "Found a slope that is not finite and above 0.");
        }

        if (!(e > 0.0) || double.IsPositiveInfinity(e))
        {
            throw new ArgumentOutOfRangeException(nameof(e), e, "Found a location that is not finite and above 0.");
        }

        (Shape, D, B, E) = (shape, d, b, e);
    }

    /// <summary>The shape of F0.</summary>
    public EventTimeShape Shape { get; }

    /// <summary>Share that ever emerges.</summary>
    public double D { get; }

    /// <summary>The shape's own b.</summary>
    public double B { get; }

    /// <summary>Location.</summary>
    public double E { get; }

    /// <summary>Slope on log time: b, or 1/b for the log-normal.</summary>
    public double Slope => ShapeFunctions.SlopeFromB(Shape, B);

    /// <summary>Share of sown seeds up by a time of 0 or later.</summary>
    public double Cdf(double time)
    {
        if (!(time >= 0.0))
        {
            throw new ArgumentOutOfRangeException(nameof(time), time, "Found a time before 0; expected 0 or later.");
        }

        return time == 0.0 ? 0.0 : D * ShapeFunctions.Cdf(Shape, Slope * (Math.Log(time) - Math.Log(E)));
    }

    /// <summary>Time by which a share p of those that ever emerge is up; p strictly between 0 and 1. Infinite if a very flat curve puts it beyond the largest number.</summary>
    public double QuantileOfEmerged(double p) => E * Math.Exp(ShapeFunctions.Quantile(Shape, CheckedShare(p)) / Slope);

    /// <summary>Time by which a share p of the sown is up, null if so many never come up.</summary>
    public double? QuantileOfSown(double p) => CheckedShare(p) < D ? QuantileOfEmerged(p / D) : null;

    /// <summary>Mean time of those that emerge; null for a log-logistic with b of 1 or less, whose mean is infinite.</summary>
    public double? MeanOfEmerged() => Shape switch
    {
        EventTimeShape.LogLogistic => B > 1.0 ? E * (Math.PI / B) / Math.Sin(Math.PI / B) : null,
        EventTimeShape.LogNormal => E * Math.Exp(0.5 * B * B),
        _ => E * MathNet.Numerics.SpecialFunctions.Gamma(1.0 + (1.0 / B)),
    };

    /// <summary>A probability checked to lie strictly between 0 and 1.</summary>
    internal static double CheckedShare(double p) => p is > 0.0 and < 1.0
        ? p
        : throw new ArgumentOutOfRangeException(nameof(p), p, string.Create(CultureInfo.InvariantCulture, $"Found the share {p}; expected one strictly between 0 and 1."));
}
