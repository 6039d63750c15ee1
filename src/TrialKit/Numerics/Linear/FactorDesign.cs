using System.Globalization;

namespace TrialKit.Numerics.Linear;

/// <summary>Design matrix of an intercept and factors: one column for each level of a factor but its first.</summary>
internal static class FactorDesign
{
    /// <summary>Columns: intercept, then levels 1.. of the first factor, of the second, and so on.</summary>
    /// <param name="factors">Level of each observation, 0.. without gaps, for each factor; one factor at least.</param>
    /// <returns>Observations by columns, of ones and zeros.</returns>
    /// <exception cref="ArgumentException">No factor, factors of different lengths, or levels with gaps.</exception>
    public static double[,] Of(params ReadOnlySpan<int[]> factors)
    {
        if (factors.IsEmpty || factors[0].Length == 0)
        {
            throw new ArgumentException("No factor or no observation was given; one of each at least was expected.", nameof(factors));
        }

        var rows = factors[0].Length;
        var before = new int[factors.Length];
        var columns = 1;
        for (var f = 0; f < factors.Length; f++)
        {
            before[f] = columns - 1;
            columns += LevelChecks.Count(factors[f], rows, nameof(factors)) - 1;
        }

        var design = new double[rows, columns];
        for (var i = 0; i < rows; i++)
        {
            design[i, 0] = 1;
            for (var f = 0; f < factors.Length; f++)
            {
                if (factors[f][i] > 0)
                {
                    design[i, before[f] + factors[f][i]] = 1;
                }
            }
        }

        return design;
    }

    /// <summary>The combinations of two factors that occur, numbered in order of first appearance: a factor within another.</summary>
    /// <param name="outer">Level of each observation.</param>
    /// <param name="inner">Level of each observation.</param>
    /// <returns>One level per observation.</returns>
    /// <exception cref="ArgumentException">Factors of different lengths.</exception>
    public static int[] Cross(ReadOnlySpan<int> outer, ReadOnlySpan<int> inner)
    {
        if (outer.Length != inner.Length)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"Factors of {outer.Length} and {inner.Length} observations were found; equal lengths were expected."), nameof(inner));
        }

        var numbers = new Dictionary<(int, int), int>();
        var crossed = new int[outer.Length];
        for (var i = 0; i < crossed.Length; i++)
        {
            if (!numbers.TryGetValue((outer[i], inner[i]), out crossed[i]))
            {
                crossed[i] = numbers.Count;
                numbers.Add((outer[i], inner[i]), crossed[i]);
            }
        }

        return crossed;
    }
}
