using System.Collections.Immutable;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Planning;

/// <summary>Strips and spots as they were drawn.</summary>
/// <param name="Seed">The seed they were drawn with; the same seed gives the same plan.</param>
/// <param name="Field">The room they were drawn in.</param>
/// <param name="Length">Length of each strip.</param>
/// <param name="RowSpacing">Distance between rows.</param>
/// <param name="Strips">The strips in the order across the field.</param>
/// <param name="Spots">The spots, strip by strip, from the near end on.</param>
/// <param name="Tramlines">Left and right edge of each sprayer track between the outermost passes.</param>
/// <param name="Width">Room the plan takes across the field, borders included.</param>
/// <param name="Findings">What to know before planting.</param>
public sealed record TrialPlan(
    long Seed,
    FieldSpace Field,
    Length Length,
    Length RowSpacing,
    ImmutableArray<PlannedStrip> Strips,
    ImmutableArray<SpotPlace> Spots,
    ImmutableArray<(Length Left, Length Right)> Tramlines,
    Length Width,
    ImmutableArray<Finding> Findings);
