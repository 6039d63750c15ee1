namespace TrialKit.Reporting.Figures;

/// <summary>Chances at one price or cost.</summary>
/// <param name="At">The price or cost.</param>
/// <param name="Pays">The chance that it pays, from 0 to 1.</param>
/// <param name="PaysWithMargin">The chance that it pays with the margin, from 0 to 1.</param>
public sealed record ChancePoint(double At, double Pays, double PaysWithMargin);
