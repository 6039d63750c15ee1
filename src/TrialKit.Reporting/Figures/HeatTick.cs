using System.Runtime.InteropServices;

namespace TrialKit.Reporting.Figures;

/// <summary>A tick of the heat scale.</summary>
/// <param name="Day">When the sum is reached, in days after planting.</param>
/// <param name="Sum">The heat sum, a round number.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct HeatTick(double Day, double Sum);
