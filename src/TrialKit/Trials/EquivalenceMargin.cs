namespace TrialKit.Trials;

/// <summary>The largest difference that would not matter, set before the trial: what lies within it on either side counts as equivalent.</summary>
/// <param name="Measure">Id of the measure, such as <c>yield</c>.</param>
/// <param name="Amount">The margin, above zero, in its own unit.</param>
/// <param name="Unit">The unit as written down, such as <c>bu/ac</c>; empty for a plain number.</param>
public sealed record EquivalenceMargin(string Measure, double Amount, string Unit)
{
    /// <summary>The margin, above zero, in its own unit.</summary>
    public double Amount { get; init; } = Amount > 0 && double.IsFinite(Amount)
        ? Amount
        : throw new ArgumentOutOfRangeException(nameof(Amount), Amount, FormattableString.Invariant($"A margin of {Amount} was found; a finite number above 0 was expected."));
}
