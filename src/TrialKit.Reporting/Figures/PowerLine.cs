namespace TrialKit.Reporting.Figures;

/// <summary>The power of one number of replicates.</summary>
/// <param name="Name">The number of replicates, as it stands beside the line.</param>
/// <param name="Points">True difference in percent of the mean and power from 0 to 1, from less to more.</param>
/// <param name="IsStrong">Whether it is the one asked for.</param>
public sealed record PowerLine(string Name, IReadOnlyList<(double Difference, double Power)> Points, bool IsStrong);
