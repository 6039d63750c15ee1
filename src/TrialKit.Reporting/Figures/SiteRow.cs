namespace TrialKit.Reporting.Figures;

/// <summary>One site in a forest of sites.</summary>
/// <param name="Name">The site.</param>
/// <param name="Text">The difference and its interval in words.</param>
/// <param name="Interval">The interval with its estimate.</param>
/// <param name="Weight">Its share of the pooled estimate, 0 to 1.</param>
public sealed record SiteRow(string Name, string Text, FigureInterval Interval, double Weight);
