namespace TrialKit.Ingest;

/// <summary>The known name that a mistyped one most resembles.</summary>
internal static class NearestName
{
    /// <summary>The known name at the least edit distance; the first of several equally near.</summary>
    /// <param name="typed">What the file says.</param>
    /// <param name="known">The names that would be right; at least one.</param>
    public static string Of(string typed, IEnumerable<string> known) => known.MinBy(name => Distance(typed, name))!;

    /// <summary>Levenshtein's distance without regard to case: the insertions, deletions and replacements that turn one name into the other.</summary>
    /// <remarks>Levenshtein, V. I. (1966). Binary codes capable of correcting deletions, insertions, and reversals. Soviet Physics Doklady 10, 707-710.
    /// Names beyond 100 characters are compared by their first 100.</remarks>
    internal static int Distance(string first, string second)
    {
        var a = first.AsSpan(0, Math.Min(first.Length, 100));
        var b = second.AsSpan(0, Math.Min(second.Length, 100));
        Span<int> previous = stackalloc int[b.Length + 1];
        Span<int> current = stackalloc int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            previous[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replace = previous[j - 1] + (char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]) ? 0 : 1);
                current[j] = Math.Min(replace, Math.Min(previous[j], current[j - 1]) + 1);
            }

            current.CopyTo(previous);
        }

        return previous[b.Length];
    }
}
