using TrialKit.Results;

namespace TrialKit.Heat;

/// <summary>Something to look out for after planting.</summary>
/// <param name="Finding">What it is.</param>
/// <param name="Kind">What the day it speaks of rests on; null when it speaks of no day.</param>
public sealed record PlantingCaution(Finding Finding, DayKind? Kind);
