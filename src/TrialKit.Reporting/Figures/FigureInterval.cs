namespace TrialKit.Reporting.Figures;

/// <summary>An estimate with its interval, as a figure draws it.</summary>
/// <param name="Low">Lower end, finite.</param>
/// <param name="Estimate">The estimate, within the interval.</param>
/// <param name="High">Upper end, finite.</param>
/// <exception cref="ArgumentOutOfRangeException">An end is NaN or infinite, or the estimate lies outside.</exception>
public sealed record FigureInterval(double Low, double Estimate, double High)
{
    /// <summary>The estimate, within the interval.</summary>
    public double Estimate { get; init; } = double.IsFinite(Low) && double.IsFinite(High) && Low <= Estimate && Estimate <= High
        ? Estimate
        : throw new ArgumentOutOfRangeException(
            nameof(Estimate),
            Estimate,
            FormattableString.Invariant($"An interval is drawn between finite ends around its estimate; found {Estimate} in {Low} to {High}."));
}
