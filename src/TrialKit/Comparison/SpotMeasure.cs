using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>A measure with its value at each spot: spots are subsamples, which say how well a strip is known and nothing of treatments.</summary>
/// <param name="Measure">What was measured.</param>
/// <param name="Values">One entry per spot.</param>
public sealed record SpotMeasure(Measure Measure, ImmutableArray<SpotValue> Values);
