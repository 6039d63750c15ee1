using TrialKit.Comparison;
using TrialKit.Trials;

namespace TrialKit.Season;

/// <summary>One treatment against another on one measure of one trial: a row of the table of comparisons.</summary>
internal sealed record ContrastRow(SeasonTrial Trial, MeasureComparison Measure, Contrast Contrast)
{
    /// <summary>A trial's rows, measure by measure.</summary>
    public static IEnumerable<ContrastRow> Of(SeasonTrial trial) =>
        trial.Analysis.Measures.SelectMany(measure => measure.Contrasts.Select(contrast => new ContrastRow(trial, measure, contrast)));

    /// <summary>A treatment's mean of the measure; null when it has none.</summary>
    public double? MeanOf(Treatment treatment) => Measure.Means.FirstOrDefault(mean => Identifier.Same(mean.Treatment.Name, treatment.Name))?.Mean;
}
