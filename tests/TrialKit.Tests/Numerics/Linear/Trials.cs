namespace TrialKit.Tests.Numerics.Linear;

/// <summary>Made-up trials in blocks for property tests.</summary>
internal static class Trials
{
    /// <summary>A connected trial with a share of its cells dropped; treatment 0 stays in each block, block 0 stays whole.</summary>
    public static (double[] Y, int[] Block, int[] Treatment) Draw(int treatments, int blocks, int seed, double dropped)
    {
        var random = new Random(seed);
        var cells = new List<(double Y, int Block, int Treatment)>();
        for (var b = 0; b < blocks; b++)
        {
            for (var t = 0; t < treatments; t++)
            {
                var y = 10 + (3 * b) + t + random.NextDouble();
                if (b == 0 || t == 0 || random.NextDouble() >= dropped)
                {
                    cells.Add((y, b, t));
                }
            }
        }

        var shuffled = cells.ToArray();
        random.Shuffle(shuffled);
        return ([.. shuffled.Select(c => c.Y)], [.. shuffled.Select(c => c.Block)], [.. shuffled.Select(c => c.Treatment)]);
    }
}
