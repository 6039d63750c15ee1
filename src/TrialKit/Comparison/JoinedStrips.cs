using System.Collections.Immutable;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>The strips that a comparison in blocks can use: blocks with two strips or more, of treatments that a chain of shared blocks joins to the baseline.</summary>
/// <param name="Entries">The strips with their values.</param>
/// <param name="Treatments">The treatments among them, in the trial's order.</param>
/// <param name="Blocks">The blocks among them, in the order of the record.</param>
/// <param name="Apart">Treatments with values that no chain of blocks joins to the baseline.</param>
internal sealed record JoinedStrips(
    ImmutableArray<(Strip Strip, double Value)> Entries,
    ImmutableArray<Treatment> Treatments,
    ImmutableArray<string> Blocks,
    ImmutableArray<Treatment> Apart)
{
    /// <summary>Finds them.</summary>
    /// <param name="values">The measure on each strip.</param>
    /// <param name="treatments">The trial's treatments.</param>
    /// <param name="baseline">The control, or null to join to the first treatment that has a value.</param>
    public static JoinedStrips Of(StripMeasure values, ImmutableArray<Treatment> treatments, Treatment? baseline) =>
        Of([.. values.Analysed.Select(entry => (entry.Entry.Strip, entry.Value))], treatments, baseline);

    private static JoinedStrips Of((Strip Strip, double Value)[] all, ImmutableArray<Treatment> treatments, Treatment? baseline)
    {
        var measured = treatments.Where(treatment => all.Any(entry => Is(entry.Strip, treatment))).ToImmutableArray();
        var start = baseline is not null && measured.Any(treatment => Identifier.Same(treatment.Name, baseline.Name)) ? baseline : measured.FirstOrDefault();
        var joined = new HashSet<string>(Identifier.Comparer);
        if (start is not null)
        {
            joined.Add(start.Name);
            while (all.Where(entry => !joined.Contains(entry.Strip.Treatment.Name)).FirstOrDefault(entry => SharesBlock(entry.Strip)) is { Strip: not null } next)
            {
                joined.Add(next.Strip.Treatment.Name);
            }
        }

        var shared = all.Where(entry => joined.Contains(entry.Strip.Treatment.Name)).GroupBy(entry => entry.Strip.Block, Identifier.Comparer).Where(block => block.Skip(1).Any()).ToArray();
        return new(
            [.. shared.SelectMany(block => block)],
            [.. measured.Where(treatment => joined.Contains(treatment.Name))],
            [.. shared.Select(block => block.Key)],
            [.. measured.Where(treatment => !joined.Contains(treatment.Name))]);

        bool SharesBlock(Strip strip) => all.Any(other => joined.Contains(other.Strip.Treatment.Name) && Identifier.Same(other.Strip.Block, strip.Block));
    }

    /// <summary>The strips that can be tested: a treatment on one strip leaves, since what it does cannot be told from what that strip is.</summary>
    /// <param name="baseline">The control, or null.</param>
    public JoinedStrips Replicated(Treatment? baseline)
    {
        // Without a treatment's only strip a block may hold one strip alone, and leave another treatment with one.
        var kept = this;
        while (kept.OnOneStrip.Any())
        {
            var replicated = kept.Treatments.Except(kept.OnOneStrip).ToImmutableArray();
            kept = Of([.. kept.Entries.Where(entry => replicated.Any(treatment => Is(entry.Strip, treatment)))], replicated, baseline);
        }

        return kept;
    }

    /// <summary>The treatments that stand on one strip only.</summary>
    public IEnumerable<Treatment> OnOneStrip => Treatments.Where(treatment => Entries.Count(entry => Is(entry.Strip, treatment)) == 1);

    /// <summary>The index of a strip's treatment among the joined ones.</summary>
    public int TreatmentIndex(Strip strip) => Treatments.IndexOf(Treatments.First(treatment => Is(strip, treatment)));

    /// <summary>The index of a strip's block among those used.</summary>
    public int BlockIndex(Strip strip) => Blocks.IndexOf(strip.Block, Identifier.Comparer);

    /// <summary>The index of the design's control among the joined treatments; -1 without one.</summary>
    public int ControlIndex(Design design) => design.Control is { } control && Treatments.FirstOrDefault(treatment => Identifier.Same(treatment.Name, control.Name)) is { } found ? Treatments.IndexOf(found) : -1;

    /// <summary>The pairs of treatments that are compared, by index: each with the control, or all where there is none.</summary>
    public (int Treatment, int Baseline)[] ComparedPairs(Design design)
    {
        var control = ControlIndex(design);
        var indices = Enumerable.Range(0, Treatments.Length).ToArray();
        return control >= 0
            ? [.. indices.Where(index => index != control).Select(index => (index, control))]
            : [.. indices.SelectMany(first => indices.Where(second => second < first).Select(second => (first, second)))];
    }

    private static bool Is(Strip strip, Treatment treatment) => Identifier.Same(strip.Treatment.Name, treatment.Name);
}
