namespace TrialKit.Tests.Examples;

/// <summary>Draws the seeds of a length of row from the event-time model of their strip.</summary>
internal static class SpotLottery
{
    private const double DoubleDistance = 0.08;
    private const double EarliestDeath = 6;
    private const double DeathSpread = 2;

    /// <summary>The seeds in the order of the tape.</summary>
    /// <remarks>
    /// A seed comes up with the strip's share, at a log-logistic time of the strip's median and steepness. It lies at its place
    /// with a normal error, or, as a double, hard by the seed before it and leaves its own place empty.
    /// </remarks>
    public static IReadOnlyList<SownSeed> Draw(ExamplePlan plan, StripTruth strip, int seeds, Chance chance)
    {
        var row = new List<SownSeed>(seeds);
        for (var i = 0; i < seeds; i++)
        {
            var isDouble = i > 0 && chance.Happens(plan.Field.Doubles);
            var place = chance.Normal((i + 0.5) * plan.SeedSpacing, plan.Field.DropError);
            var position = isDouble ? row[i - 1].Position + (DoubleDistance * plan.SeedSpacing) : Math.Max(0, place);
            var up = chance.Happens(strip.Share) ? chance.LogLogistic(strip.MedianDays, strip.Steepness) : double.PositiveInfinity;
            var dead = chance.Happens(plan.Field.Deaths) ? up + EarliestDeath + Math.Abs(chance.Normal(0, DeathSpread)) : double.PositiveInfinity;
            row.Add(new(position, isDouble, up, dead, chance.Normal(strip.Depth, plan.Field.DepthSpread)));
        }

        return [.. row.OrderBy(seed => seed.Position)];
    }
}
