namespace TrialKit.Reporting.Figures;

/// <summary>A strip on a map.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Treatment">Its treatment as printed.</param>
/// <param name="Tone">Its tone: 0 for the control, then 1 and up; the tones repeat after six.</param>
/// <param name="Left">Its left edge from the corner.</param>
/// <param name="Right">Its right edge.</param>
public sealed record MapStrip(string Name, string Treatment, int Tone, double Left, double Right);
