namespace TrialKit.Reporting.Figures;

/// <summary>Sums of heat by one method.</summary>
/// <param name="Name">The method's name.</param>
/// <param name="Sums">The sum at the end of each day, from the first; null from a missing day on.</param>
public sealed record HeatSeries(string Name, IReadOnlyList<double?> Sums);
