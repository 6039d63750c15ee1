using System.Globalization;
using TrialKit.Numerics.Linear;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>What to doubt about a comparison in blocks.</summary>
internal static class BlockFindings
{
    private const int FewBlocks = 3;

    /// <summary>Findings about which strips take part.</summary>
    public static IEnumerable<Finding> Of(StripMeasure values, JoinedStrips strips, StripTrial trial)
    {
        var (label, id) = (values.Measure.Label, values.Measure.Id);
        foreach (var treatment in trial.Treatments.Where(treatment => !values.Analysed.Any(entry => Identifier.Same(entry.Entry.Strip.Treatment.Name, treatment.Name))))
        {
            yield return new("treatment-without-value", FindingWeight.Caution, $"{label}: no strip of {treatment.Label} has a value.", id);
        }

        foreach (var treatment in strips.Apart)
        {
            yield return new("treatment-not-comparable", FindingWeight.Serious, $"{label}: {treatment.Label} shares no block with the treatments it would be compared with, and leaves the comparison.", id);
        }

        foreach (var treatment in strips.OnOneStrip)
        {
            yield return new("treatment-one-strip", FindingWeight.Serious, $"{label}: {treatment.Label} stands on one strip only; its mean is shown and nothing is tested of it.", id);
        }

        switch (strips.Blocks.Length)
        {
            case < 2:
                yield return new("no-blocks", FindingWeight.Serious, $"{label}: fewer than two blocks can be compared, so nothing is tested.", id);
                break;
            case < FewBlocks:
                yield return new("few-blocks", FindingWeight.Caution, $"{label}: two blocks only; the intervals rest on very little.", id);
                break;
        }

        if (strips.Entries.Length < strips.Blocks.Length * strips.Treatments.Length && strips.Blocks.Length >= 2)
        {
            yield return new("strips-missing", FindingWeight.Caution, string.Create(CultureInfo.InvariantCulture, $"{label}: {strips.Entries.Length} of {strips.Blocks.Length * strips.Treatments.Length} strips have a value; means are adjusted for the blocks by least squares."), id);
        }
    }

    /// <summary>That no two treatments stand on two strips each within shared blocks.</summary>
    public static Finding NoReplicates(Measure measure) =>
        new("no-replicates", FindingWeight.Serious, $"{measure.Label}: no two treatments stand on two strips each in blocks they share, so nothing is tested.", measure.Id);

    /// <summary>Findings about what the analysis of variance could do.</summary>
    public static IEnumerable<Finding> Of(StripMeasure values, BlockAnova anova)
    {
        var (label, id) = (values.Measure.Label, values.Measure.Id);
        switch (anova.Error.Status)
        {
            case FStatus.NoVariation:
                yield return new("no-variation", FindingWeight.Serious, $"{label}: every strip gave the same value; check the data. No test was made.", id);
                break;
            case FStatus.NoErrorVariation:
                yield return new("no-spread", FindingWeight.Serious, $"{label}: blocks and treatments leave no spread at all; check the data. No F and no t test was made; the tests by rearranging and by ranks, printed beside, need no spread.", id);
                break;
            case FStatus.NoErrorDegrees:
                yield return new("no-error-degrees", FindingWeight.Serious, $"{label}: too few strips to measure the spread; no test was made.", id);
                break;
        }
    }
}
