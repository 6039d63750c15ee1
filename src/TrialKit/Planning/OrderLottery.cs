using TrialKit.Numerics;

namespace TrialKit.Planning;

/// <summary>Draws the order of the treatments in each block.</summary>
internal static class OrderLottery
{
    private const int BlocksWithBoth = 3;

    /// <summary>An order of 0..treatments-1 for each block.</summary>
    /// <remarks>
    /// Each order is as likely as any other. A draw that puts the treatments in one order in every block, seen from the field or from
    /// the planter, is drawn again: it would tie each treatment to one side. Every order stays as likely as the others, since the draws
    /// refused are the same for each.
    /// </remarks>
    /// <param name="treatments">Treatments, 2 or more.</param>
    /// <param name="blocks">Blocks, 2 or more.</param>
    /// <param name="turned">In halves of the planter, whether the planter comes back in the pass of each block, so that left lies right in the field; else empty.</param>
    /// <param name="random">Where chance comes from.</param>
    public static int[][] Draw(int treatments, int blocks, ReadOnlySpan<bool> turned, RandomStream random)
    {
        Checks.AtLeast(treatments, 2);
        Checks.AtLeast(blocks, 2);
        while (true)
        {
            var orders = new int[blocks][];
            for (var block = 0; block < blocks; block++)
            {
                orders[block] = [.. Enumerable.Range(0, treatments)];
                random.Shuffle(orders[block].AsSpan());
            }

            if (!AllAlike(orders) && !AlikeInField(orders, turned))
            {
                return orders;
            }
        }
    }

    // Two passes that differ by the half of the planter always agree by the side of the field: only from three on can both be had.
    private static bool AlikeInField(int[][] orders, ReadOnlySpan<bool> turned)
    {
        if (turned.IsEmpty || orders.Length < BlocksWithBoth)
        {
            return false;
        }

        var field = new int[orders.Length][];
        for (var block = 0; block < orders.Length; block++)
        {
            field[block] = turned[block] ? [.. orders[block].Reverse()] : orders[block];
        }

        return AllAlike(field);
    }

    private static bool AllAlike(int[][] orders) => orders.All(order => order.SequenceEqual(orders[0]));
}
