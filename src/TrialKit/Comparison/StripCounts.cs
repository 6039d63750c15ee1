using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>Plants counted on each strip, out of seeds or along row.</summary>
/// <param name="Measure">The measure whose comparison these counts stand beside.</param>
/// <param name="IsShare">Whether the sizes are seeds, of which a share is up; else they are lengths of row.</param>
/// <param name="Values">One entry per strip that was counted.</param>
public sealed record StripCounts(Measure Measure, bool IsShare, ImmutableArray<StripCount> Values);
