using System.Runtime.InteropServices;

namespace TrialKit.Reporting.Figures;

/// <summary>What one strip or pair leaves unexplained.</summary>
/// <param name="At">Its place across: an order in the field or a level.</param>
/// <param name="Residual">Observed less expected.</param>
/// <param name="Tone">0 for the control, 1 and up for treatments.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct ResidualPoint(double At, double Residual, int Tone);
