namespace TrialKit.Emergence;

/// <summary>The share up at one visit, without any curve.</summary>
/// <param name="Days">Days after planting.</param>
/// <param name="Share">From 0 to 1: of the seeds, or of the plants up at the last visit when the seeds are unknown or fewer.</param>
/// <param name="StandardError">sqrt(F (1 - F) / n), that of seeds independent of each other; null when spots were visited at different times.</param>
public readonly record struct ShareUp(double Days, double Share, double? StandardError);
