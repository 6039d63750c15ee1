namespace TrialKit.Comparison.Sites;

/// <summary>What a measure came to on one strip that took part in a site's comparison.</summary>
/// <param name="Block">The block or pair it stands in.</param>
/// <param name="Treatment">The treatment's name.</param>
/// <param name="Value">The value in the measure's unit.</param>
public sealed record SiteStrip(string Block, string Treatment, double Value);
