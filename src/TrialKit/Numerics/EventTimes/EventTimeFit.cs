using System.Globalization;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.EventTimes;

/// <summary>Maximum-likelihood fit of F(t) = d F0(t) to grouped interval-censored counts.</summary>
/// <remarks>
/// Estimated on (logit d, ln b, ln e); standard errors from the inverse of the observed information, quantiles by the delta method.
/// Where the likelihood has no maximum inside the parameter space the fit says so by a flag and leaves the curve null; it never throws on counts that exist.
/// The model: Onofri, Mesgaran and Ritz 2022, Weed Science.
/// </remarks>
internal sealed class EventTimeFit
{
    // Share of the eventual emergers still to come at the last visit, above which the curve is not called flat.
    private const double FlatWithin = 0.05;
    private const double ZeroGradient = 1e-9;

    // A location or slope beyond e^300 is near the end of what a double holds.
    private const double Bound = 300.0;

    private readonly double[]? covariance;
    private double? saturated;

    private EventTimeFit(EventTimeShape shape, IntervalCounts counts, double logLikelihood, double? d, EventTimeCurve? curve, double[]? covariance, int parameters, DampedNewton? search, EventTimeFlags flags)
    {
        Shape = shape;
        Counts = counts;
        LogLikelihood = logLikelihood;
        D = d;
        Curve = curve;
        this.covariance = covariance;
        Parameters = parameters;
        GradientNorm = search?.GradientNorm ?? 0.0;
        Iterations = search?.Iterations ?? 0;
        Flags = flags;
    }

    private EventTimeFit(EventTimeFit other, double[] sandwich)
    {
        Shape = other.Shape;
        Counts = other.Counts;
        LogLikelihood = other.LogLikelihood;
        D = other.D;
        Curve = other.Curve;
        covariance = sandwich;
        Parameters = other.Parameters;
        GradientNorm = other.GradientNorm;
        Iterations = other.Iterations;
        Flags = other.Flags;
    }

    /// <summary>The shape fitted.</summary>
    public EventTimeShape Shape { get; }

    /// <summary>The counts it was fitted to.</summary>
    public IntervalCounts Counts { get; }

    /// <summary>The log-likelihood at the estimate, or its least upper bound where no maximum exists.</summary>
    public double LogLikelihood { get; }

    /// <summary>The log-likelihood of the non-parametric estimate, which no curve exceeds.</summary>
    public double SaturatedLogLikelihood => saturated ??= Saturated(Counts);

    /// <summary>Share of sown seeds that ever emerges; null where nothing was watched.</summary>
    public double? D { get; }

    /// <summary>The fitted curve; null where location and spread cannot be estimated.</summary>
    public EventTimeCurve? Curve { get; }

    /// <summary>The shape's own b.</summary>
    public double? B => Curve?.B;

    /// <summary>Location e.</summary>
    public double? E => Curve?.E;

    /// <summary>Standard error of the share; null if it was fixed or the information is singular.</summary>
    public double? StandardErrorOfD => covariance is { } c && c[0] > 0.0 ? Curve!.Value.D * (1.0 - Curve.Value.D) * Math.Sqrt(c[0]) : null;

    /// <summary>Standard error of b.</summary>
    public double? StandardErrorOfB => covariance is { } c ? B * Math.Sqrt(c[4]) : null;

    /// <summary>Standard error of e.</summary>
    public double? StandardErrorOfE => covariance is { } c ? E * Math.Sqrt(c[8]) : null;

    /// <summary>Parameters estimated.</summary>
    public int Parameters { get; }

    /// <summary>Akaike's criterion, 2 x parameters - 2 log L.</summary>
    public double Aic => (2.0 * Parameters) - (2.0 * LogLikelihood);

    /// <summary>Largest absolute gradient on the working scale, per seed: the certificate of the maximum.</summary>
    public double GradientNorm { get; }

    /// <summary>Whether the gradient is zero to rounding.</summary>
    public bool Converged => GradientNorm <= ZeroGradient;

    /// <summary>Newton steps tried.</summary>
    public int Iterations { get; }

    /// <summary>Doubts about the fit.</summary>
    public EventTimeFlags Flags { get; }

    /// <summary>Covariance of (logit d, ln b, ln e), 3 x 3 row major, zero in the rows of a fixed share; null if the information is singular.</summary>
    public ReadOnlySpan<double> Covariance => covariance;

    /// <summary>Fits with the share estimated.</summary>
    public static EventTimeFit Fit(IntervalCounts counts, EventTimeShape shape) => Fit(counts, shape, shareFixed: false);

    /// <summary>Fits with the share fixed at 1: every seed watched is taken to emerge in the end. The only fit when the seeds sown are unknown.</summary>
    public static EventTimeFit FitOfEmerged(IntervalCounts counts, EventTimeShape shape) => Fit(counts, shape, shareFixed: true);

    /// <summary>Time by which a share p of those that emerge is up; null where no curve could be fitted or the time is beyond any number.</summary>
    public EventQuantile? QuantileOfEmerged(double p)
    {
        var q = ShapeFunctions.Quantile(Shape, EventTimeCurve.CheckedShare(p));
        return Curve is { } curve && curve.QuantileOfEmerged(p) is var time && double.IsFinite(time) ? WithError(time, 0.0, q) : null;
    }

    /// <summary>Time by which a share p of the sown is up; null where no curve could be fitted or so many never come up.</summary>
    public EventQuantile? QuantileOfSown(double p)
    {
        EventTimeCurve.CheckedShare(p);
        if (Curve is not { } curve || curve.QuantileOfSown(p) is not { } time || !double.IsFinite(time))
        {
            return null;
        }

        // d ln t / d logit d: through p/d, whose derivative in logit d is -(p/d)(1 - d).
        var share = p / curve.D;
        var q = ShapeFunctions.Quantile(Shape, share);
        return WithError(time, -share * (1.0 - curve.D) / (ShapeFunctions.Density(Shape, q) * curve.Slope), q);
    }

    /// <summary>Time from a share <paramref name="low"/> to a share <paramref name="high"/> of those that emerge; null where no curve could be fitted.</summary>
    public EventSpread? Spread(double low, double high)
    {
        if (!(EventTimeCurve.CheckedShare(low) < EventTimeCurve.CheckedShare(high)))
        {
            throw new ArgumentOutOfRangeException(nameof(high), high, "Found an upper share that is not above the lower one.");
        }

        if (Curve is not { } curve)
        {
            return null;
        }

        var (first, last) = (curve.QuantileOfEmerged(low), curve.QuantileOfEmerged(high));
        if (!double.IsFinite(last))
        {
            return null;
        }

        var perB = SignOfB * ((last * ShapeFunctions.Quantile(Shape, high)) - (first * ShapeFunctions.Quantile(Shape, low))) / curve.Slope;
        return new EventSpread(last - first, covariance is null ? null : Math.Sqrt(Quadratic(0.0, perB, last - first)));
    }

    /// <summary>The same fit with standard errors that respect strips: seeds within a strip are alike, strips independent.</summary>
    /// <param name="strips">The strips whose counts together were fitted, at least two.</param>
    /// <remarks>Sandwich covariance without a small-sample factor; see <see cref="EventTimes.ClusterSandwich"/>. Without a curve or information the fit is returned as it is.</remarks>
    /// <exception cref="ArgumentException">The strips do not add up to the counts that were fitted.</exception>
    public EventTimeFit ClusterSandwich(IReadOnlyList<IntervalCounts> strips)
    {
        if (strips.Count < 2 || Math.Abs(strips.Sum(s => s.Total) - Counts.Total) > 1e-9 * Counts.Total)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found {strips.Count} strips with {strips.Sum(s => s.Total)} seeds; expected at least two that together hold the {Counts.Total} seeds fitted."), nameof(strips));
        }

        if (Curve is not { } curve || covariance is not { } inverse)
        {
            return this;
        }

        var shareFixed = inverse[0] == 0.0;
        var a = shareFixed ? 0.0 : Math.Log(curve.D) - Logs.OnePlus(-curve.D);
        var scores = strips.Select(strip =>
        {
            var score = new double[3];
            EventTimeLikelihood.Accumulate(strip, Shape, shareFixed, a, Math.Log(curve.Slope), Math.Log(curve.E), score, new double[9]);
            score[1] *= -SignOfB;
            return score;
        });
        return new EventTimeFit(this, EventTimes.ClusterSandwich.Of(inverse, 3, scores));
    }

    // ln t = ln e + q / s, so d ln t / d ln s = -q / s; ln b is ln s, or -ln s for the log-normal.
    private double SignOfB => Shape == EventTimeShape.LogNormal ? 1.0 : -1.0;

    private EventQuantile WithError(double time, double perLogitD, double q) =>
        new(time, covariance is null ? null : Math.Sqrt(Quadratic(perLogitD, SignOfB * q / Curve!.Value.Slope, 1.0)));

    private double Quadratic(double a, double b, double e)
    {
        var c = covariance!;
        return Math.Max(0.0, (a * a * c[0]) + (b * b * c[4]) + (e * e * c[8]) + (2.0 * ((a * b * c[1]) + (a * e * c[2]) + (b * e * c[5]))));
    }

    private static EventTimeFit Fit(IntervalCounts counts, EventTimeShape shape, bool shareFixed)
    {
        if (!Enum.IsDefined(shape))
        {
            throw new ArgumentOutOfRangeException(nameof(shape), shape, "Found an unknown shape; expected log-logistic, log-normal or Weibull.");
        }

        var flags = shareFixed ? EventTimeFlags.ShareNotEstimated : EventTimeFlags.None;
        if (counts.Length - 1 <= (shareFixed || counts.RightCensored == 0.0 ? 2 : 3))
        {
            flags |= EventTimeFlags.TooFewIntervals;
        }

        if (counts.Events == 1.0)
        {
            flags |= EventTimeFlags.OnePlant;
        }

        if (!shareFixed && counts.RightCensored == 0.0)
        {
            flags |= EventTimeFlags.ShareAtBoundary;
        }

        var step = shareFixed ? StepLimit.AtShareOne(counts) : StepLimit.WithShare(counts);
        if (step.Kind != EventTimeFlags.None)
        {
            flags |= step.Kind | EventTimeFlags.InformationSingular;
            double? share = counts.Total == 0.0 ? null : shareFixed ? 1.0 : counts.Events / counts.Total;
            return new EventTimeFit(shape, counts, step.LogLikelihood, share, null, null, shareFixed ? 2 : 3, null, flags);
        }

        var (a, u, v) = EventTimeLikelihood.Start(counts, shape);
        var atOne = DampedNewton.Maximise(new AtShareOne(counts, shape), [u, v], counts.Total, Bound);
        var free = shareFixed || counts.RightCensored == 0.0
            ? null
            : DampedNewton.Maximise(new WithShare(counts, shape), [a, u, v], counts.Total, Bound);
        // On the boundary the free search creeps towards it from below, so equal to rounding means the boundary.
        if (free is null || (atOne.GradientNorm <= ZeroGradient && atOne.Value >= free.Value - (1e-9 * (1.0 + Math.Abs(free.Value)))))
        {
            flags |= shareFixed ? EventTimeFlags.None : EventTimeFlags.ShareAtBoundary;
            return Finish(counts, shape, atOne, [double.PositiveInfinity, atOne.Point[0], atOne.Point[1]], flags);
        }

        return Finish(counts, shape, free, free.Point, flags);
    }

    private static EventTimeFit Finish(IntervalCounts counts, EventTimeShape shape, DampedNewton search, ReadOnlySpan<double> point, EventTimeFlags flags)
    {
        var s = Math.Exp(point[1]);
        var curve = new EventTimeCurve(shape, StableMath.Logistic(point[0]), ShapeFunctions.SlopeFromB(shape, s), Math.Exp(point[2]));
        var n = search.Point.Length;
        var working = SmallSystem.InformativeInverse(search.Hessian, n, n - 2) is { } inverse ? OnLogB(shape, inverse, n) : null;
        if (working is null)
        {
            flags |= EventTimeFlags.InformationSingular;
        }

        if (search.GradientNorm > ZeroGradient)
        {
            flags |= EventTimeFlags.NotConverged;
        }

        if (curve.Cdf(counts.LastVisit) < (1.0 - FlatWithin) * curve.D)
        {
            flags |= EventTimeFlags.StillRising;
        }

        return new EventTimeFit(shape, counts, search.Value, curve.D, curve, working, n, search, flags);
    }

    // Widens a 2 x 2 matrix by a zero share, and turns ln s into ln b.
    private static double[] OnLogB(EventTimeShape shape, double[] inverse, int n)
    {
        var wide = new double[9];
        var offset = 3 - n;
        var sign = shape == EventTimeShape.LogNormal ? -1.0 : 1.0;
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                var flip = (i + offset == 1) != (j + offset == 1) ? sign : 1.0;
                wide[((i + offset) * 3) + j + offset] = flip * inverse[(i * n) + j];
            }
        }

        return wide;
    }

    private static double Saturated(IntervalCounts counts)
    {
        var sum = 0.0;
        for (var i = 0; i < counts.Length; i++)
        {
            if (i > 0 && counts.Left[i] < counts.Right[i - 1])
            {
                return Turnbull.Fit(counts).LogLikelihood;
            }

            sum += counts.Count[i] * Math.Log(counts.Count[i] / counts.Total);
        }

        return sum;
    }

    private readonly struct WithShare(IntervalCounts counts, EventTimeShape shape) : ISmoothObjective
    {
        public int Dimension => 3;

        public double Evaluate(scoped ReadOnlySpan<double> point, scoped Span<double> gradient, scoped Span<double> hessian)
        {
            gradient.Clear();
            hessian.Clear();
            return EventTimeLikelihood.Accumulate(counts, shape, shareFixed: false, point[0], point[1], point[2], gradient, hessian);
        }
    }

    private readonly struct AtShareOne(IntervalCounts counts, EventTimeShape shape) : ISmoothObjective
    {
        public int Dimension => 2;

        public double Evaluate(scoped ReadOnlySpan<double> point, scoped Span<double> gradient, scoped Span<double> hessian)
        {
            Span<double> g = stackalloc double[3];
            Span<double> h = stackalloc double[9];
            g.Clear();
            h.Clear();
            var value = EventTimeLikelihood.Accumulate(counts, shape, shareFixed: true, 0.0, point[0], point[1], g, h);
            g[1..].CopyTo(gradient);
            h[4..6].CopyTo(hessian);
            h[7..9].CopyTo(hessian[2..]);
            return value;
        }
    }
}
