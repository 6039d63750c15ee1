namespace TrialKit.Reporting.Figures;

/// <summary>One treatment in the key of a design map.</summary>
/// <param name="Name">The treatment's name.</param>
/// <param name="Tone">0 for the control, 1 and up for treatments.</param>
public sealed record MapKey(string Name, int Tone);
