namespace TrialKit.Numerics.Power;

/// <summary>Searches the fewest replicates that suffice, where more always suffice too.</summary>
internal static class FewestReplicates
{
    /// <summary>The fewest from 2 on; nothing when more than <paramref name="most"/> are needed.</summary>
    /// <param name="suffices">Whether so many suffice.</param>
    /// <param name="most">Where to give up, 2 or more.</param>
    public static int? Find(Func<int, bool> suffices, int most)
    {
        Checks.AtLeast(most, 2);

        // Power grows with replicates: double until enough, then halve the gap.
        var enough = 2;
        while (!suffices(enough))
        {
            if (enough == most)
            {
                return null;
            }

            enough = (int)Math.Min(2L * enough, most);
        }

        var tooFew = enough / 2;
        while (enough - tooFew > 1)
        {
            var middle = tooFew + ((enough - tooFew) / 2);
            (tooFew, enough) = suffices(middle) ? (tooFew, middle) : (middle, enough);
        }

        return enough;
    }
}
