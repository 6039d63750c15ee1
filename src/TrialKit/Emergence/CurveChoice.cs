using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics.EventTimes;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>Which shape of curve serves the trial, and why: one for all strips, so that their times stay comparable.</summary>
/// <remarks>
/// Akaike's criterion (Akaike 1974, IEEE Trans. Autom. Control 19:716-723) is summed over the strips whose counts can tell shapes apart: every
/// shape was fitted and there are more informative intervals than parameters. The log-logistic stands unless another is lower by
/// <see cref="Margin"/> or more (Burnham and Anderson 2002, value from memory). A shape that the design sets beforehand is used whatever the criterion says.
/// Each shape of a strip counts the same parameters: a share that ran to 1 under one of them was estimated like the others.
/// </remarks>
/// <param name="Model">The shape used.</param>
/// <param name="Candidates">Each shape with its criterion, in a fixed order.</param>
/// <param name="Strips">Strips whose counts can tell shapes apart.</param>
/// <param name="Reason">Why this one, as a sentence.</param>
public sealed record CurveChoice(string Model, ImmutableArray<CurveCandidate> Candidates, int Strips, string Reason)
{
    /// <summary>A difference in Akaike's criterion below which two shapes are not told apart.</summary>
    public const double Margin = 2;

    /// <summary>The shapes tried; the first stands where the counts do not tell.</summary>
    internal static readonly ImmutableArray<EventTimeShape> Shapes = [EventTimeShape.LogLogistic, EventTimeShape.LogNormal, EventTimeShape.Weibull];

    /// <summary>The shape.</summary>
    internal EventTimeShape Shape { get; init; }

    /// <summary>What a reader is told of the choice.</summary>
    internal Finding Finding => new("curve-chosen", FindingWeight.Note, Reason);

    /// <summary>Chooses.</summary>
    /// <param name="strips">Each analysed strip's fits, one per shape.</param>
    /// <param name="set">The shape set beforehand; null when none is.</param>
    internal static CurveChoice Of(IEnumerable<ImmutableArray<EventTimeFit>> strips, CurveShape? set = null)
    {
        var telling = strips.Where(fits => fits.All(fit => fit.Curve is not null && fit.Converged && !fit.Flags.HasFlag(EventTimeFlags.TooFewIntervals))).ToArray();
        var sums = Shapes.ToDictionary(shape => shape, shape => telling.Sum(fits => Criterion(fits, shape)));
        ImmutableArray<CurveCandidate> candidates = [.. Shapes.Select(shape => new CurveCandidate(Name(shape), telling.Length > 0 ? sums[shape] : null))];
        if (set is { } given)
        {
            return new(Name(Of(given)), candidates, telling.Length, $"The curve is {Name(Of(given))}: the design set it beforehand.") { Shape = Of(given) };
        }

        if (telling.Length == 0)
        {
            return new(Name(Shapes[0]), candidates, 0, "The curve is log-logistic by custom: no strip has intervals enough to tell one shape from another.") { Shape = Shapes[0] };
        }

        var best = Shapes.MinBy(shape => sums[shape]);
        var gain = sums[Shapes[0]] - sums[best];
        var chosen = gain >= Margin ? best : Shapes[0];
        var reason = (best == Shapes[0], chosen == best) switch
        {
            (true, _) => Text($"The curve is log-logistic: of the three shapes tried its AIC is the lowest over {telling.Length} strips, by {Shapes.Skip(1).Min(shape => sums[shape]) - sums[best]:0.0}."),
            (false, true) => Text($"The curve is {Name(best)}: over {telling.Length} strips its AIC is {gain:0.0} lower than that of the log-logistic."),
            _ => Text($"The curve is log-logistic: the {Name(best)} has a lower AIC over {telling.Length} strips by {gain:0.0} only, too little to tell the two apart."),
        };
        return new(Name(chosen), candidates, telling.Length, reason) { Shape = chosen };
    }

    private static double Criterion(ImmutableArray<EventTimeFit> fits, EventTimeShape shape) =>
        (2.0 * fits.Max(fit => fit.Parameters)) - (2.0 * fits.Single(fit => fit.Shape == shape).LogLikelihood);

    private static EventTimeShape Of(CurveShape shape) => shape switch
    {
        CurveShape.LogNormal => EventTimeShape.LogNormal,
        CurveShape.Weibull => EventTimeShape.Weibull,
        _ => EventTimeShape.LogLogistic,
    };

    /// <summary>A shape's name.</summary>
    internal static string Name(EventTimeShape shape) => shape switch
    {
        EventTimeShape.LogLogistic => "log-logistic",
        EventTimeShape.LogNormal => "log-normal",
        _ => "Weibull",
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
