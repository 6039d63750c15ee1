using TrialKit.Numerics.EventTimes;

namespace TrialKit.Emergence;

/// <summary>A curve of emergence over time, F(t) = d F0(t; b, e), fitted to counts known only to within visits.</summary>
/// <param name="Model">The name of the curve.</param>
/// <param name="Share">d, the share of the seeds that ever comes up, from 0 to 1; null when nothing was watched.</param>
/// <param name="Steepness">b; null when the counts do not tell it.</param>
/// <param name="Location">e, in days from planting: half of the plants that come up are up, in a Weibull curve 63 %; null when the counts do not tell it.</param>
/// <param name="LogLikelihood">At the estimate, or its least upper bound where no maximum exists.</param>
/// <param name="SaturatedLogLikelihood">Of a free share in every interval; null where intervals overlap.</param>
/// <param name="Parameters">Parameters estimated.</param>
/// <param name="GradientNorm">The largest absolute gradient on the working scale, per seed: zero at a maximum.</param>
/// <param name="Converged">Whether there is a curve and the gradient is zero to rounding.</param>
public sealed record EventTimeEstimate(
    string Model,
    FittedParameter? Share,
    FittedParameter? Steepness,
    FittedParameter? Location,
    double LogLikelihood,
    double? SaturatedLogLikelihood,
    int Parameters,
    double GradientNorm,
    bool Converged)
{
    /// <summary>The shape of F0.</summary>
    internal EventTimeShape Shape { get; init; }

    /// <summary>The share of the seeds up by a moment; null without a curve.</summary>
    /// <param name="days">Days after planting, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative or NaN.</exception>
    public double? ShareAt(double days) => Share is { } d && Steepness is { } b && Location is { } e
        ? new EventTimeCurve(Shape, d.Value, b.Value, e.Value).Cdf(days)
        : null;

    /// <summary>The public face of a fit.</summary>
    internal static EventTimeEstimate From(EventTimeFit fit) => new(
        $"{CurveChoice.Name(fit.Shape)} {(fit.Flags.HasFlag(EventTimeFlags.ShareNotEstimated) ? "of the plants seen" : "with a share that never comes up")}",
        fit.D is { } d ? new(d, fit.StandardErrorOfD) : null,
        fit.B is { } b ? new(b, fit.StandardErrorOfB) : null,
        fit.E is { } e ? new(e, fit.StandardErrorOfE) : null,
        fit.LogLikelihood,
        fit.SaturatedLogLikelihood,
        fit.Parameters,
        fit.GradientNorm,
        fit.Curve is not null && fit.Converged)
    {
        Shape = fit.Shape,
    };
}
