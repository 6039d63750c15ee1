namespace TrialKit.Reporting.Figures;

/// <summary>Something that happened on a day of the heat figure.</summary>
/// <param name="Date">The day.</param>
/// <param name="Text">What happened, in a few words.</param>
public sealed record HeatEvent(DateOnly Date, string Text);
