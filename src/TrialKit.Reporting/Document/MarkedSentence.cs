namespace TrialKit.Reporting.Document;

/// <summary>A sentence that answers, and the interval it rests on.</summary>
/// <param name="Text">The sentence, which can be read aloud.</param>
/// <param name="Mark">Its interval, or null where there is none.</param>
public sealed record MarkedSentence(RichText Text, IntervalMark? Mark = null);
