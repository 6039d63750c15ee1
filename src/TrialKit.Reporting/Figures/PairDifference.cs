namespace TrialKit.Reporting.Figures;

/// <summary>The difference found in one pair of strips.</summary>
/// <param name="Name">The pair's name.</param>
/// <param name="Value">Treatment less control, or null where it was not recorded.</param>
public sealed record PairDifference(string Name, double? Value);
