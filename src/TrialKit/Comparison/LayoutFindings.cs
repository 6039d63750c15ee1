using System.Globalization;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>What to doubt about how the strips were laid out, whatever was measured on them.</summary>
public static class LayoutFindings
{
    private const int BlocksThatCanTellAnOrder = 3;
    private const double RareChance = 0.05;
    private const double LeastTold = 0.0001;

    /// <summary>The findings about a trial's layout.</summary>
    /// <param name="trial">The trial.</param>
    public static IEnumerable<Finding> Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return LeftOut(trial).Concat(Incomplete(trial)).Concat(Planting(trial)).Concat(Order(trial));
    }

    private static IEnumerable<Finding> LeftOut(StripTrial trial) =>
        from strip in trial.Strips
        where !strip.IsAnalysed
        select new Finding("strip-left-out", FindingWeight.Note, $"Strip {strip} ({strip.Treatment.Label}, block {strip.Block}) was left out: {strip.LeftOut}.", strip.Name);

    private static IEnumerable<Finding> Incomplete(StripTrial trial)
    {
        foreach (var block in Analysed(trial))
        {
            var absent = trial.Treatments
                .Where(treatment => !block.Any(strip => Identifier.Same(strip.Treatment.Name, treatment.Name)))
                .Select(treatment => treatment.Label)
                .ToArray();
            if (absent.Length > 0)
            {
                yield return new("block-incomplete", FindingWeight.Caution, $"Block {block.Key} has no strip of {string.Join(", ", absent)} in the analysis.", block.Key);
            }
        }
    }

    private static IEnumerable<Finding> Order(StripTrial trial)
    {
        if (trial.Strips.Any(strip => strip.Order is null))
        {
            yield return new("order-not-recorded", FindingWeight.Note, "The place of each strip across the field was not recorded, so whether the treatments were laid out at random cannot be seen.");
            yield break;
        }

        var orders = trial.Strips
            .GroupBy(strip => strip.Block, Identifier.Comparer)
            .Where(block => block.Count() == trial.Treatments.Length)
            .Select(block => string.Join('|', block.OrderBy(strip => strip.Order).Select(strip => strip.Treatment.Name.Trim().ToUpperInvariant())))
            .ToArray();
        if (orders.Length >= BlocksThatCanTellAnOrder && orders.Distinct(StringComparer.Ordinal).Count() == 1)
        {
            var chance = Math.Pow(Enumerable.Range(1, trial.Treatments.Length).Aggregate(1.0, (product, factor) => product * factor), 1 - orders.Length);
            yield return new(
                "same-order",
                chance < RareChance ? FindingWeight.Serious : FindingWeight.Caution,
                string.Create(CultureInfo.InvariantCulture, $"The treatments stand in the same order in all {orders.Length} complete blocks; a layout drawn at random does so with a chance {Percent(chance)} %. If they were not randomised, a slope across the field or one half of the planter could look like a treatment."));
        }
    }

    private static string Percent(double chance) =>
        chance < LeastTold ? string.Create(CultureInfo.InvariantCulture, $"under {100 * LeastTold:0.##}") : string.Create(CultureInfo.InvariantCulture, $"of {100 * chance:0.##}");

    /// <summary>Treatments planted on different days within a block: what a treatment does and what a day does cannot be told apart.</summary>
    private static IEnumerable<Finding> Planting(StripTrial trial)
    {
        var apart = Analysed(trial).Where(block => block.Select(strip => strip.Planted).Distinct().Skip(1).Any()).Select(block => block.Key).ToArray();
        if (apart.Length > 0)
        {
            yield return new("planted-apart", FindingWeight.Serious, $"Strips of one block were planted on different days (block {string.Join(", ", apart)}): days and heat to emergence differ with the planting day whatever the treatment does, and the two cannot be told apart there.");
        }
    }

    private static IEnumerable<IGrouping<string, Strip>> Analysed(StripTrial trial) =>
        trial.Strips.Where(strip => strip.IsAnalysed).GroupBy(strip => strip.Block, Identifier.Comparer);
}
