namespace TrialKit.Reporting.Document;

/// <summary>The answers: one sentence each, with interval marks on a shared zero line beside them.</summary>
/// <param name="Sentences">The answers, the most important first.</param>
/// <param name="LeftOfZero">What a mark left of zero means, such as <c>less with chains</c>.</param>
/// <param name="RightOfZero">What a mark right of zero means, such as <c>more with chains</c>.</param>
public sealed record MarkedSentences(
    IReadOnlyList<MarkedSentence> Sentences,
    string LeftOfZero,
    string RightOfZero) : Block;
