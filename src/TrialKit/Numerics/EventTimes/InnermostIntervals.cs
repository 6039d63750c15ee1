using System.Globalization;

namespace TrialKit.Numerics.EventTimes;

/// <summary>The innermost intervals of interval-censored data, the only places where the non-parametric estimate can put mass, and the run of them inside each observation.</summary>
/// <remarks>
/// Turnbull 1976, J. R. Stat. Soc. B 38:290-295; Peto 1973. An observation is (L, R], or the moment L where L equals R.
/// At equal times a moment's own left end comes first, then right ends (they are inside), then left ends (they are outside).
/// </remarks>
internal sealed class InnermostIntervals
{
    private InnermostIntervals(double[] left, double[] right, int[] first, int[] last)
    {
        Left = left;
        Right = right;
        First = first;
        Last = last;
    }

    /// <summary>Left ends, rising.</summary>
    public double[] Left { get; }

    /// <summary>Right ends, rising; infinite for the last where someone was never seen.</summary>
    public double[] Right { get; }

    /// <summary>The first innermost interval inside each observation.</summary>
    public int[] First { get; }

    /// <summary>The last innermost interval inside each observation.</summary>
    public int[] Last { get; }

    /// <summary>Finds the innermost intervals in O(n log n).</summary>
    /// <param name="left">Left ends, finite.</param>
    /// <param name="right">Right ends, at or after the left ends; infinite for right-censored.</param>
    /// <exception cref="ArgumentException">Nothing was given, lengths differ, or an interval is impossible.</exception>
    public static InnermostIntervals Of(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        Check(left, right);
        var values = DistinctEnds(left, right);
        var (leftAt, rightAt) = (new int[left.Length], new int[left.Length]);
        var marks = new Ends[values.Length];
        for (var i = 0; i < left.Length; i++)
        {
            leftAt[i] = Array.BinarySearch(values, left[i]);
            rightAt[i] = left[i] == right[i] ? leftAt[i] : Array.BinarySearch(values, right[i]);
            marks[leftAt[i]] |= left[i] == right[i] ? Ends.Moment : Ends.Left;
            marks[rightAt[i]] |= Ends.Right;
        }

        // Counts of innermost intervals that begin before the time, by its moment, and that end by it.
        var (beginBefore, beginBy, endBy) = (new int[values.Length], new int[values.Length], new int[values.Length]);
        var (from, to) = (new List<double>(), new List<double>());
        var open = -1;
        for (var v = 0; v < values.Length; v++)
        {
            beginBefore[v] = from.Count;
            open = marks[v].HasFlag(Ends.Moment) ? v : open;
            if (marks[v].HasFlag(Ends.Right) && open >= 0)
            {
                from.Add(values[open]);
                to.Add(values[v]);
                open = -1;
            }

            beginBy[v] = from.Count;
            endBy[v] = from.Count;
            open = marks[v].HasFlag(Ends.Left) ? v : open;
        }

        var (first, last) = (leftAt, rightAt);
        for (var i = 0; i < left.Length; i++)
        {
            first[i] = left[i] == right[i] ? beginBefore[leftAt[i]] : beginBy[leftAt[i]];
            last[i] = endBy[rightAt[i]] - 1;
        }

        return new InnermostIntervals([.. from], [.. to], first, last);
    }

    private static double[] DistinctEnds(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        var values = new double[2 * left.Length];
        left.CopyTo(values);
        right.CopyTo(values.AsSpan(left.Length));
        Array.Sort(values);
        var distinct = 1;
        for (var i = 1; i < values.Length; i++)
        {
            if (values[i] != values[distinct - 1])
            {
                values[distinct++] = values[i];
            }
        }

        return values[..distinct];
    }

    private static void Check(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        if (left.Length == 0 || left.Length != right.Length)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found {left.Length} left and {right.Length} right ends; expected as many of each, at least one."), nameof(right));
        }

        for (var i = 0; i < left.Length; i++)
        {
            if (!double.IsFinite(left[i]) || !(right[i] >= left[i]))
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found the interval ({left[i]}, {right[i]}] at position {i}; expected a finite left end and a right end not before it."), nameof(left));
            }
        }
    }

    [Flags]
    private enum Ends
    {
        None = 0,
        Moment = 1,
        Right = 2,
        Left = 4,
    }
}
