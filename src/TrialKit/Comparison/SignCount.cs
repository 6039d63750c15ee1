using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>How many pairs went which way, and the sign test of it.</summary>
/// <param name="More">Pairs with more on the treatment's strip.</param>
/// <param name="Less">Pairs with less.</param>
/// <param name="Equal">Pairs without a difference; the test leaves them out.</param>
/// <param name="Test">The exact test; null when no pair differs.</param>
public sealed record SignCount(int More, int Less, int Equal, ExactP? Test);
