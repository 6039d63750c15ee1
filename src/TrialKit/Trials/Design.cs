using System.Collections.Immutable;
using TrialKit.Quantities;

namespace TrialKit.Trials;

/// <summary>The plan of comparison.</summary>
/// <param name="Layout">Pairs or blocks.</param>
/// <param name="Control">The treatment that others are compared with; null in blocks without one.</param>
/// <param name="Level">The level of intervals and verdicts.</param>
public sealed record Design(Layout Layout, Treatment? Control, ConfidenceLevel Level)
{
    /// <summary>Margins set beforehand, within which treatments count as equivalent; no measure has two.</summary>
    public ImmutableArray<EquivalenceMargin> Margins { get; init; } = [];

    /// <summary>The shape of the curves of emergence, set beforehand; null to choose among the shapes by the counts.</summary>
    public CurveShape? Curve { get; init; }
}
