using System.Runtime.InteropServices;

namespace TrialKit.Reporting.Figures;

/// <summary>A share of seeds up at a time.</summary>
/// <param name="Day">Days after planting, with fractions.</param>
/// <param name="Share">The share of seeds sown that are up: 0 for none, 1 for all.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct CurvePoint(double Day, double Share);
