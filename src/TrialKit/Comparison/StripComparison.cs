using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>Compares a measure between the treatments of a trial, the strip as the unit.</summary>
/// <remarks>Spots within a strip are subsamples: they were averaged before this (Hurlbert 1984, Ecol. Monogr. 54:187-211).</remarks>
public static class StripComparison
{
    /// <summary>The comparison that the trial's layout calls for.</summary>
    /// <param name="values">The measure on each strip.</param>
    /// <param name="trial">The trial whose strips these are.</param>
    public static MeasureComparison Compare(StripMeasure values, StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(trial);
        var design = trial.Design;
        if (design.Layout == Layout.Pairs)
        {
            var control = design.Control!;
            var treatment = trial.Treatments.Single(candidate => !Identifier.Same(candidate.Name, control.Name));
            return PairedStrips.Compare(values, treatment, control, trial);
        }

        return BlockedStrips.Compare(values, trial);
    }
}
