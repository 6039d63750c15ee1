namespace TrialKit.Reporting.Figures;

/// <summary>One treatment's strips and mean.</summary>
/// <param name="Name">The treatment's name.</param>
/// <param name="Tone">0 for the control, 1 to 6 for treatments.</param>
/// <param name="Strips">The value of each strip, in order of blocks.</param>
/// <param name="Mean">The mean and its interval, or null where there is none.</param>
/// <param name="Text">The mean in words, printed at the right.</param>
public sealed record TreatmentMean(string Name, int Tone, IReadOnlyList<double> Strips, FigureInterval? Mean, string Text);
