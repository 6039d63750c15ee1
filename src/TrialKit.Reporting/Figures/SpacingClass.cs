namespace TrialKit.Reporting.Figures;

/// <summary>A class of spacings with its limits.</summary>
/// <param name="From">Lower limit.</param>
/// <param name="To">Upper limit; positive infinity for the last class.</param>
/// <param name="Name">Its name, such as <c>double</c> or <c>skip</c>.</param>
public sealed record SpacingClass(double From, double To, string Name);
