using System.Collections.Immutable;
using System.Globalization;

namespace TrialKit.Numerics.Linear;

/// <summary>Letters for a table of means: two that share no letter were shown to differ, two that share one were not.</summary>
/// <remarks>
/// Piepho 2004, Journal of Computational and Graphical Statistics 13:456: insert, absorb, sweep. The sweep leaves a
/// redundant letter that stands between two of its kind, so that a letter reads as a run down the sorted means.
/// </remarks>
internal static class Letters
{
    private const string Alphabet = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /// <summary>Letters of each treatment; <c>a</c> is on the largest mean.</summary>
    /// <param name="means">One finite mean per treatment.</param>
    /// <param name="differ">Whether two treatments, by index, were shown to differ; asked once for each pair, the smaller index first.</param>
    /// <returns>Letters in alphabetical order, one text per treatment; after 52 letters numbers in brackets.</returns>
    /// <exception cref="ArgumentException">A mean is not finite.</exception>
    public static ImmutableArray<string> Of(ReadOnlySpan<double> means, Func<int, int, bool> differ)
    {
        Checks.Sample(means, 1);
        var values = means.ToArray();
        var order = Enumerable.Range(0, values.Length).OrderByDescending(i => values[i]).ThenBy(i => i).ToArray();
        var place = new int[order.Length];
        for (var i = 0; i < order.Length; i++)
        {
            place[order[i]] = i;
        }

        var pairs = new List<(int Left, int Right)>();
        for (var i = 0; i < values.Length; i++)
        {
            for (var j = i + 1; j < values.Length; j++)
            {
                if (differ(i, j))
                {
                    pairs.Add((Math.Min(place[i], place[j]), Math.Max(place[i], place[j])));
                }
            }
        }

        pairs.Sort();
        var columns = Insert(values.Length, pairs);
        Sweep(columns, values.Length, pairs);
        var ordered = columns.OrderBy(column => column, Comparer<bool[]>.Create(FromTheTop)).ToArray();
        return [.. place.Select(row => string.Concat(Enumerable.Range(0, ordered.Length).Where(c => ordered[c][row]).Select(Letter)))];
    }

    private static List<bool[]> Insert(int treatments, List<(int Left, int Right)> pairs)
    {
        var all = new bool[treatments];
        Array.Fill(all, value: true);
        var columns = new List<bool[]> { all };
        foreach (var (left, right) in pairs)
        {
            // A column that joins the two becomes two columns, one without each.
            var next = columns.Where(column => !(column[left] && column[right])).ToList();
            foreach (var column in columns.Where(column => column[left] && column[right]))
            {
                next.Add(Without(column, left));
                next.Add(Without(column, right));
            }

            columns = Absorb(next);
        }

        return columns;
    }

    private static List<bool[]> Absorb(List<bool[]> columns)
    {
        var kept = new List<bool[]>();
        for (var i = 0; i < columns.Count; i++)
        {
            var column = columns[i];
            var covered = columns.Where((other, j) => j != i && IsWithin(column, other) && (j < i || !IsWithin(other, column))).Any();
            if (!covered)
            {
                kept.Add(column);
            }
        }

        return kept;
    }

    private static void Sweep(List<bool[]> columns, int treatments, List<(int Left, int Right)> pairs)
    {
        var apart = new HashSet<(int, int)>(pairs);
        foreach (var column in columns)
        {
            for (var row = 0; row < treatments; row++)
            {
                // A mark is redundant when each pair that it joins is joined by another column too.
                if (column[row] && !IsInside(column, row) && IsRedundant(columns, column, row, apart))
                {
                    column[row] = false;
                }
            }
        }

        columns.RemoveAll(column => !Array.Exists(column, marked => marked));
    }

    private static bool IsInside(bool[] column, int row) =>
        column.AsSpan(0, row).Contains(value: true) && column.AsSpan(row + 1).Contains(value: true);

    private static bool IsRedundant(List<bool[]> columns, bool[] column, int row, HashSet<(int, int)> apart)
    {
        for (var other = 0; other < column.Length; other++)
        {
            var joined = other == row || !apart.Contains((Math.Min(row, other), Math.Max(row, other)));
            if (column[other] && joined && !columns.Exists(c => c != column && c[row] && c[other]))
            {
                return false;
            }
        }

        return true;
    }

    private static bool[] Without(bool[] column, int row)
    {
        var copy = (bool[])column.Clone();
        copy[row] = false;
        return copy;
    }

    private static bool IsWithin(bool[] inner, bool[] outer)
    {
        for (var i = 0; i < inner.Length; i++)
        {
            if (inner[i] && !outer[i])
            {
                return false;
            }
        }

        return true;
    }

    private static int FromTheTop(bool[]? left, bool[]? right)
    {
        for (var row = 0; row < left!.Length; row++)
        {
            if (left[row] != right![row])
            {
                return left[row] ? -1 : 1;
            }
        }

        return 0;
    }

    private static string Letter(int column) => column < Alphabet.Length
        ? Alphabet[column].ToString()
        : string.Create(CultureInfo.InvariantCulture, $"({column + 1})");
}
