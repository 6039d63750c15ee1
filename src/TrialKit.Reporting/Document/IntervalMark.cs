namespace TrialKit.Reporting.Document;

/// <summary>An interval drawn small beside its sentence, on a scale of its own around the shared zero line.</summary>
/// <param name="Low">Lower end, or negative infinity where the interval is open.</param>
/// <param name="Estimate">The estimate, finite, not below <paramref name="Low"/> and not above <paramref name="High"/>.</param>
/// <param name="High">Upper end, or positive infinity where the interval is open.</param>
/// <param name="Tone">Whether a difference was shown.</param>
/// <exception cref="ArgumentOutOfRangeException">A value is NaN, the estimate is infinite or lies outside its interval.</exception>
public sealed record IntervalMark(double Low, double Estimate, double High, MarkTone Tone)
{
    /// <summary>The estimate.</summary>
    public double Estimate { get; init; } = double.IsFinite(Estimate) && Low <= Estimate && Estimate <= High
        ? Estimate
        : throw new ArgumentOutOfRangeException(
            nameof(Estimate),
            Estimate,
            FormattableString.Invariant($"An estimate lies within its interval; found {Estimate} in {Low} to {High}."));

    /// <summary>The value at either edge of the mark's scale: a little beyond the farther finite end.</summary>
    public double Reach => 1.12 * new[] { Low, Estimate, High }.Where(double.IsFinite).Select(Math.Abs).Append(double.Epsilon).Max();
}
