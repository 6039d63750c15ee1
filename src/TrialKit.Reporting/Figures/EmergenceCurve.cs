namespace TrialKit.Reporting.Figures;

/// <summary>One treatment's emergence: its fitted curve and the strips behind it.</summary>
/// <param name="Name">The treatment's name, printed at the line's end.</param>
/// <param name="Tone">0 for the control, 1 to 6 for treatments.</param>
/// <param name="Curve">The fitted curve in order of time; empty where none could be fitted.</param>
/// <param name="Strips">For each strip, the shares found at its visits, in order of time.</param>
/// <param name="Undefined">Stretches in which the curve may run anywhere, or null for none.</param>
public sealed record EmergenceCurve(
    string Name,
    int Tone,
    IReadOnlyList<CurvePoint> Curve,
    IReadOnlyList<IReadOnlyList<CurvePoint>> Strips,
    IReadOnlyList<UndefinedStretch>? Undefined = null);
