namespace TrialKit.Reporting.Document;

/// <summary>A thin line across the page that sets two parts apart.</summary>
public sealed record Rule : Block;
