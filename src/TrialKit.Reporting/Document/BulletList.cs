namespace TrialKit.Reporting.Document;

/// <summary>A list of short points.</summary>
/// <param name="Items">The points in order.</param>
public sealed record BulletList(IReadOnlyList<RichText> Items) : Block;
