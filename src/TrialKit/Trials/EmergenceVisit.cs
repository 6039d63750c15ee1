namespace TrialKit.Trials;

/// <summary>One visit to a flagged spot.</summary>
/// <param name="At">The moment; midnight at the start of the day when only a date was recorded.</param>
/// <param name="Plants">Plants standing at that visit, as counted (cumulative).</param>
public readonly record struct EmergenceVisit(DateTime At, int Plants);
