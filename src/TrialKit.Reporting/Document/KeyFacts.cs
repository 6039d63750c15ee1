namespace TrialKit.Reporting.Document;

/// <summary>A line of facts, such as crop, planting date and layout.</summary>
/// <param name="Facts">The facts in order.</param>
public sealed record KeyFacts(IReadOnlyList<KeyFact> Facts) : Block;
