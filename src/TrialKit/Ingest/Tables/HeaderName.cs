using TrialKit.Ingest.Cells;

namespace TrialKit.Ingest.Tables;

/// <summary>A header split into words: <c>length_ft</c>, <c>length (ft)</c> and <c>Length, m</c> are a name and a unit.</summary>
internal static class HeaderName
{
    private static readonly char[] Separators = [' ', '_', '-', ',', '(', ')', '[', ']', ':', '.', '\t', '\u00A0'];

    /// <summary>Whether a header names a column, and with which unit.</summary>
    /// <param name="header">The header as written.</param>
    /// <param name="column">The column it may name.</param>
    /// <param name="unit">What follows the name, as written; empty when nothing does.</param>
    /// <returns>True when the header is the column's name, or the name followed by what may be a unit.</returns>
    public static bool Names(string header, Column column, out string unit)
    {
        if (Matches(header, column.Name, column.Kind, out unit))
        {
            return true;
        }

        return column.Alias is not null && Matches(header, column.Alias, column.Kind, out unit);
    }

    private static bool Matches(string header, string name, UnitKind? kind, out string unit)
    {
        var words = header.ToLowerInvariant().Split(Separators, StringSplitOptions.RemoveEmptyEntries);
        var wanted = name.Replace("_", string.Empty, StringComparison.Ordinal);
        var built = string.Empty;
        for (var i = 0; i < words.Length; i++)
        {
            built += words[i];
            if (built == wanted && (kind is not null || i == words.Length - 1))
            {
                unit = string.Join(' ', words[(i + 1)..]);
                return true;
            }
        }

        unit = string.Empty;
        return false;
    }
}
