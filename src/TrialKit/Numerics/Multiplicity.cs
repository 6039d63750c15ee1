namespace TrialKit.Numerics;

/// <summary>p values adjusted so that the chance of any false finding among them stays below the level.</summary>
internal static class Multiplicity
{
    /// <summary>Bonferroni: each p times their number, at most 1.</summary>
    public static double[] Bonferroni(ReadOnlySpan<double> p)
    {
        var adjusted = Checked(p);
        for (var i = 0; i < adjusted.Length; i++)
        {
            adjusted[i] = Math.Min(1, adjusted[i] * p.Length);
        }

        return adjusted;
    }

    /// <summary>Holm's step-down (Holm 1979): the smallest p times m, the next times m - 1, none below one before it.</summary>
    public static double[] Holm(ReadOnlySpan<double> p)
    {
        var sorted = Checked(p);
        var order = new int[sorted.Length];
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(sorted, order);
        var adjusted = new double[sorted.Length];
        var floor = 0.0;
        for (var rank = 0; rank < sorted.Length; rank++)
        {
            floor = Math.Max(floor, Math.Min(1, sorted[rank] * (sorted.Length - rank)));
            adjusted[order[rank]] = floor;
        }

        return adjusted;
    }

    private static double[] Checked(ReadOnlySpan<double> p)
    {
        Checks.AtLeast(p.Length, 1);
        foreach (var value in p)
        {
            Checks.Probability(value, nameof(p));
        }

        return p.ToArray();
    }
}
