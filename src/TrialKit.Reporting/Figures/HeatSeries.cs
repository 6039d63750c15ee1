namespace TrialKit.Reporting.Figures;

/// <summary>Sums of heat by one method.</summary>
/// <param name="Name">The method's name.</param>
/// <param name="Unit">The unit of its sums; methods of one unit share a panel.</param>
/// <param name="Sums">The sum at the end of each day, from the first; null from a missing day on.</param>
/// <param name="Total">The sum as it is told, such as <c>196</c> or <c>at least 115</c>.</param>
public sealed record HeatSeries(string Name, string Unit, IReadOnlyList<double?> Sums, string Total);
