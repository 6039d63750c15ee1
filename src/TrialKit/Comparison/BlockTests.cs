using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>What belongs to a comparison in blocks alone.</summary>
/// <param name="Anova">The analysis of variance.</param>
/// <param name="Residuals">Observed less fitted, with the strip.</param>
public sealed record BlockTests(AnovaTable Anova, ImmutableArray<StripValue> Residuals);
