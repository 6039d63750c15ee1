namespace TrialKit.Tests.Examples;

/// <summary>Draws the order of treatments within each block, and each strip's truth.</summary>
internal static class StripLottery
{
    private const double MoistureSpread = 0.4;
    private const double LargestShare = 0.995;

    /// <summary>The strips across the field.</summary>
    public static IReadOnlyList<StripTruth> Draw(ExamplePlan plan, Chance chance)
    {
        var strips = new List<StripTruth>();
        for (var block = 1; block <= plan.Blocks; block++)
        {
            var later = chance.Normal(0, plan.Field.BlockMedianDays);
            var richer = chance.Normal(0, plan.Field.BlockYield);
            var place = 0;
            foreach (var treatment in chance.Shuffled(plan.Treatments))
            {
                var trouble = plan.Troubles.SingleOrDefault(t => t.Block == block && t.Treatment == treatment.Name);
                if (trouble is { LeftOut: null })
                {
                    continue;
                }

                place++;
                strips.Add(DrawStrip(plan, chance, (block, place, strips.Count + 1), treatment, trouble, (later, richer)));
            }
        }

        return strips;
    }

    private static StripTruth DrawStrip(
        ExamplePlan plan,
        Chance chance,
        (int Block, int Place, int Order) at,
        TreatmentTruth treatment,
        BlockTrouble? trouble,
        (double Later, double Richer) block)
    {
        var kept = trouble?.ShareKept ?? 1;
        return new(
            plan.StripName(at.Block, at.Place, at.Order),
            at.Block,
            treatment,
            at.Order,
            plan.PlantedNextDay.Contains(at.Block) ? plan.Planted.AddDays(1) : plan.Planted,
            plan.StripLength + (plan.LengthStep * (at.Order - 1)),
            Math.Min(LargestShare, chance.Normal(treatment.Share, plan.Field.StripShare)) * kept,
            chance.Normal(treatment.MedianDays + block.Later, plan.Field.StripMedianDays),
            chance.Normal(treatment.Steepness, plan.Field.StripSteepness),
            chance.Normal(treatment.Yield + block.Richer, plan.Field.StripYield) * kept,
            chance.Normal(plan.Field.Moisture, MoistureSpread),
            chance.Normal(plan.Field.Depth, plan.Field.StripDepth),
            trouble?.LeftOut);
    }
}
