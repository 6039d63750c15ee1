namespace TrialKit.Tests.Examples;

/// <summary>What a further measure truly is.</summary>
/// <param name="Name">The measure.</param>
/// <param name="Unit">Its unit; empty when it has none.</param>
/// <param name="Step">The finest step that is written down.</param>
/// <param name="Lowest">The lowest value that can be written.</param>
/// <param name="Highest">The highest.</param>
/// <param name="StripSpread">Standard deviation between strips of a treatment.</param>
/// <param name="SpotSpread">Standard deviation between spots of a strip.</param>
/// <param name="Means">The mean of each treatment, in the order of the treatments.</param>
internal sealed record MeasureTruth(
    string Name,
    string Unit,
    double Step,
    double Lowest,
    double Highest,
    double StripSpread,
    double SpotSpread,
    IReadOnlyList<double> Means);
