using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Figures;

/// <summary>One measure's difference.</summary>
/// <param name="Name">The measure.</param>
/// <param name="Text">The difference and its interval in words, such as <c>+600 (−20 to 1,190) plants/ac</c>.</param>
/// <param name="Mark">The interval, or null where there is none: the text then says why.</param>
public sealed record ForestRow(string Name, string Text, IntervalMark? Mark);
