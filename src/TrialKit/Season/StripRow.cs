using TrialKit.Comparison;
using TrialKit.Results;

namespace TrialKit.Season;

/// <summary>One measure on one strip of one trial: a row of the table of strips.</summary>
internal sealed record StripRow(SeasonTrial Trial, Measure Measure, StripValue Entry)
{
    /// <summary>A trial's rows, measure by measure, strips in the trial's order.</summary>
    public static IEnumerable<StripRow> Of(SeasonTrial trial) =>
        trial.Analysis.Measures.SelectMany(measure => measure.Values.Values.Select(entry => new StripRow(trial, measure.Measure, entry)));
}
