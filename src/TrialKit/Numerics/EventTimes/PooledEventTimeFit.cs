using System.Globalization;

namespace TrialKit.Numerics.EventTimes;

/// <summary>One event-time curve for many strips, moved by covariates on ln e and optionally on ln b and logit d, with a covariance that respects the strips.</summary>
/// <remarks>
/// The likelihood is that of independent seeds; standard errors come both from its observed information I and from the sandwich I^-1 (sum s s') I^-1 with s the score of a strip
/// (Liang and Zeger 1986, Biometrika 73:13-22), without a small-sample factor. With few strips the sandwich is too small: use t with few degrees of freedom, or the permutation test.
/// </remarks>
internal sealed class PooledEventTimeFit
{
    private const double ZeroGradient = 1e-9;
    private const double Bound = 300.0;

    // A share this near 1 (logit 16) is told from 1 by no count below ten million.
    private const double ShareIsOne = 16.0;

    private readonly PooledLayout layout;
    private readonly double[] point;

    private PooledEventTimeFit(PooledLayout layout, double[] point, double logLikelihood, double gradientNorm, double[]? covariance, double[]? sandwich, EventTimeFlags flags)
    {
        this.layout = layout;
        this.point = point;
        LogLikelihood = logLikelihood;
        GradientNorm = gradientNorm;
        Covariance = covariance;
        Sandwich = sandwich;
        Flags = flags;
    }

    /// <summary>Parameters estimated; 0 where no maximum exists.</summary>
    public int Parameters => point.Length;

    /// <summary>The log-likelihood at the estimate, or its least upper bound where no maximum exists.</summary>
    public double LogLikelihood { get; }

    /// <summary>Largest absolute gradient on the working scale, per seed.</summary>
    public double GradientNorm { get; }

    /// <summary>Whether the gradient is zero to rounding.</summary>
    public bool Converged => GradientNorm <= ZeroGradient;

    /// <summary>Inverse of the observed information, row major; null if singular.</summary>
    public double[]? Covariance { get; }

    /// <summary>The sandwich with the strips as clusters, row major; null if the information is singular.</summary>
    public double[]? Sandwich { get; }

    /// <summary>Doubts about the fit.</summary>
    public EventTimeFlags Flags { get; }

    /// <summary>Fits a pooled curve.</summary>
    /// <param name="clusters">Strips, at least one, each with the same number of covariates.</param>
    /// <param name="shape">The shape of F0.</param>
    /// <param name="effects">What the covariates move.</param>
    /// <param name="shareFixed">Fixes the share at 1, as when the seeds sown are unknown.</param>
    /// <exception cref="ArgumentException">No strip, covariates that differ in number or are not finite, or an effect on a fixed share.</exception>
    public static PooledEventTimeFit Fit(IReadOnlyList<EventTimeCluster> clusters, EventTimeShape shape, PooledEffects effects, bool shareFixed)
    {
        Check(clusters, effects, shareFixed);
        var merged = IntervalCounts.Merge(clusters.Select(c => c.Counts));
        var flags = shareFixed ? EventTimeFlags.ShareNotEstimated : EventTimeFlags.None;
        var step = shareFixed ? StepLimit.AtShareOne(merged) : StepLimit.WithShare(merged);
        var covariates = clusters[0].Covariates.Count;
        if (step.Kind != EventTimeFlags.None)
        {
            return new PooledEventTimeFit(new PooledLayout(shape, effects, covariates, shareFixed), [], step.LogLikelihood, 0.0, null, null, flags | step.Kind | EventTimeFlags.InformationSingular);
        }

        var atOne = Search(clusters, merged, new PooledLayout(shape, effects & ~PooledEffects.Share, covariates, shareFixed: true));
        if (shareFixed)
        {
            return Finish(clusters, atOne, flags);
        }

        if (merged.RightCensored > 0.0)
        {
            var free = Search(clusters, merged, new PooledLayout(shape, effects, covariates, shareFixed: false));
            if (effects.HasFlag(PooledEffects.Share) && clusters.Any(c => free.Layout.At(free.Newton.Point, c.Covariates).A > ShareIsOne))
            {
                flags |= EventTimeFlags.ShareEffectDropped;
                free = Search(clusters, merged, new PooledLayout(shape, effects & ~PooledEffects.Share, covariates, shareFixed: false));
            }

            if (atOne.Newton.GradientNorm > ZeroGradient || free.Newton.Value > atOne.Newton.Value + (1e-9 * (1.0 + Math.Abs(atOne.Newton.Value))))
            {
                return Finish(clusters, free, flags);
            }
        }

        return Finish(clusters, atOne, flags | EventTimeFlags.ShareAtBoundary | (effects.HasFlag(PooledEffects.Share) ? EventTimeFlags.ShareEffectDropped : EventTimeFlags.None));
    }

    /// <summary>The effect of a covariate on one part of the curve, on its working scale (ln e, ln b or logit d); null if not estimated.</summary>
    /// <param name="part">Exactly one part.</param>
    /// <param name="covariate">Position of the covariate, from 0.</param>
    public PooledEffect? EffectOn(PooledEffects part, int covariate) => Estimate(layout.IndexOf(part, covariate + 1));

    /// <summary>The value of one part where every covariate is 0, on its working scale; null if not estimated.</summary>
    public PooledEffect? InterceptOf(PooledEffects part) => Estimate(layout.IndexOf(part, 0));

    /// <summary>The curve at given covariates; null where no maximum exists.</summary>
    public EventTimeCurve? CurveAt(IReadOnlyList<double> covariates)
    {
        if (point.Length == 0)
        {
            return null;
        }

        var (a, u, v) = layout.At(point, covariates);
        return new EventTimeCurve(layout.Shape, StableMath.Logistic(a), ShapeFunctions.SlopeFromB(layout.Shape, Math.Exp(u)), Math.Exp(v));
    }

    private PooledEffect? Estimate(int index)
    {
        if (index < 0 || point.Length == 0)
        {
            return null;
        }

        double? Error(double[]? matrix) => matrix is null ? null : Math.Sqrt(Math.Max(0.0, matrix[(index * point.Length) + index]));
        return new PooledEffect(layout.SignOf(index) * point[index], Error(Covariance), Error(Sandwich));
    }

    private static (PooledLayout Layout, DampedNewton Newton) Search(IReadOnlyList<EventTimeCluster> clusters, IntervalCounts merged, PooledLayout layout)
    {
        var (a, u, v) = EventTimeLikelihood.Start(merged, layout.Shape);
        var start = new double[layout.Parameters];
        layout.SetIntercepts(start, a, u, v);
        return (layout, DampedNewton.Maximise(new Objective(clusters, layout), start, merged.Total, Bound));
    }

    private static PooledEventTimeFit Finish(IReadOnlyList<EventTimeCluster> clusters, (PooledLayout Layout, DampedNewton Newton) search, EventTimeFlags flags)
    {
        var (layout, newton) = search;
        var n = layout.Parameters;
        var inverse = SmallSystem.InformativeInverse(newton.Hessian, n, layout.Logits);
        flags |= inverse is null ? EventTimeFlags.InformationSingular : EventTimeFlags.None;
        flags |= newton.GradientNorm > ZeroGradient ? EventTimeFlags.NotConverged : EventTimeFlags.None;
        var sandwich = inverse is null ? null : ClusterSandwich.Of(inverse, n, clusters.Select(c => layout.ScoreOf(newton.Point, c)));
        return new PooledEventTimeFit(layout, newton.Point, newton.Value, newton.GradientNorm, inverse, sandwich, flags);
    }

    private static void Check(IReadOnlyList<EventTimeCluster> clusters, PooledEffects effects, bool shareFixed)
    {
        if (clusters.Count == 0)
        {
            throw new ArgumentException("Found no strip; expected at least one.", nameof(clusters));
        }

        if (shareFixed && effects.HasFlag(PooledEffects.Share))
        {
            throw new ArgumentException("Found an effect on the share while the share is fixed at 1; expected one or the other.", nameof(effects));
        }

        for (var i = 0; i < clusters.Count; i++)
        {
            var x = clusters[i].Covariates;
            if (x.Count != clusters[0].Covariates.Count)
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found {x.Count} covariates in strip {i + 1} and {clusters[0].Covariates.Count} in the first; expected as many in each."), nameof(clusters));
            }

            if (x.Any(value => !double.IsFinite(value)))
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found a covariate of strip {i + 1} that is not a finite number."), nameof(clusters));
            }
        }
    }

    private readonly struct Objective(IReadOnlyList<EventTimeCluster> clusters, PooledLayout layout) : ISmoothObjective
    {
        public int Dimension => layout.Parameters;

        public double Evaluate(scoped ReadOnlySpan<double> point, scoped Span<double> gradient, scoped Span<double> hessian)
        {
            gradient.Clear();
            hessian.Clear();
            var value = 0.0;
            foreach (var cluster in clusters)
            {
                value += layout.Accumulate(point, cluster, gradient, hessian);
            }

            return value;
        }
    }
}
