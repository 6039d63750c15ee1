namespace TrialKit.Reporting.Document;

/// <summary>What follows begins a page.</summary>
public sealed record PageBreak : Block;
