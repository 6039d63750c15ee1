namespace TrialKit.Reporting.Figures;

/// <summary>One treatment's spacings, counted into bins.</summary>
/// <param name="Name">The treatment's name.</param>
/// <param name="Tone">0 for the control, 1 to 6 for treatments.</param>
/// <param name="Shares">For each bin, the share of spacings in it: 0 for none, 1 for all.</param>
public sealed record SpacingSeries(string Name, int Tone, IReadOnlyList<double> Shares);
