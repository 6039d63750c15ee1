namespace TrialKit.Reporting.Figures;

/// <summary>Sums of heat by one method.</summary>
/// <param name="Name">The method's name.</param>
/// <param name="Unit">The unit of its sums; methods of one unit share a panel.</param>
/// <param name="Sums">The sum of the days on record at the end of each day, from the first.</param>
/// <param name="Complete">Days from the first on of which none is missing; after them a sum is the least it can be.</param>
/// <param name="Total">The sum as it is told, such as <c>196</c> or <c>at least 115</c>.</param>
public sealed record HeatSeries(string Name, string Unit, IReadOnlyList<double> Sums, int Complete, string Total);
