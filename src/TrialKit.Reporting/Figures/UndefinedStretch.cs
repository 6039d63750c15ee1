using System.Runtime.InteropServices;

namespace TrialKit.Reporting.Figures;

/// <summary>A stretch between two visits where a curve may run anywhere within bounds; drawn as a band.</summary>
/// <param name="FromDay">Its beginning, in days after planting.</param>
/// <param name="ToDay">Its end.</param>
/// <param name="LowShare">The share at its beginning.</param>
/// <param name="HighShare">The share at its end.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct UndefinedStretch(double FromDay, double ToDay, double LowShare, double HighShare);
