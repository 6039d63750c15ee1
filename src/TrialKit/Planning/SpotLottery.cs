using TrialKit.Numerics;

namespace TrialKit.Planning;

/// <summary>Draws where spots begin along a strip.</summary>
internal static class SpotLottery
{
    /// <summary>Beginnings of so many spots that do not overlap, from the near end on; every such set of places is as likely as any other.</summary>
    /// <param name="room">Steps along which spots may lie.</param>
    /// <param name="length">Steps that one spot takes.</param>
    /// <param name="spots">How many spots.</param>
    /// <param name="random">Where chance comes from.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spots do not fit.</exception>
    public static int[] Draw(int room, int length, int spots, RandomStream random)
    {
        Checks.AtLeast(spots, 1);
        Checks.AtLeast(length, 1);

        // What the spots leave is shared out by dots on a line; the spots are put between the dots.
        var free = room - (spots * length);
        Checks.AtLeast(free, 0);
        var places = new SortedSet<int>();
        while (places.Count < spots)
        {
            places.Add(random.NextInt(free + spots));
        }

        return [.. places.Select((place, index) => place - index + (index * length))];
    }
}
