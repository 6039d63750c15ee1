namespace TrialKit.Trials;

/// <summary>A rule that a draft breaks, and what breaks it.</summary>
/// <param name="Rule">Which rule.</param>
/// <param name="IsError">Whether it stops the trial; otherwise it is a warning.</param>
/// <param name="Subject">The record that breaks the rule: a <see cref="Strip"/>, a <see cref="StandCount"/>, an <see cref="EmergenceSpot"/> and so on.</param>
/// <param name="Item">The index of the offending visit within a spot; null for other subjects.</param>
/// <param name="Found">What was found.</param>
/// <param name="Expected">What was expected.</param>
public sealed record RuleViolation(DesignRule Rule, bool IsError, object Subject, int? Item, string Found, string Expected)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Found}; {Expected}";
}
