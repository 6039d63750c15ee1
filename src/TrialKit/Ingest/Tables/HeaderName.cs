using TrialKit.Ingest.Cells;

namespace TrialKit.Ingest.Tables;

/// <summary>A header split into words: <c>length_ft</c>, <c>length (ft)</c> and <c>Length, m</c> are a name and a unit.</summary>
internal static class HeaderName
{
    private static readonly char[] Separators = [' ', '_', '-', ',', '(', ')', '[', ']', ':', '.', '\t', '\u00A0'];

    /// <summary>The column that a header names. A reading whose unit is known goes before one that leaves words over, so that
    /// <c>max temperature (F)</c> is a maximum in F and not <c>max</c> in an unknown unit.</summary>
    /// <param name="header">The header as written.</param>
    /// <param name="columns">The columns it may name.</param>
    /// <param name="unit">What follows the name, as written; empty when nothing does.</param>
    /// <returns>Null when it names none.</returns>
    public static Column? Find(string header, IReadOnlyList<Column> columns, out string unit)
    {
        Column? found = null;
        unit = string.Empty;
        foreach (var column in columns)
        {
            foreach (var name in (IEnumerable<string>)[column.Name, .. column.Aliases])
            {
                if (!Matches(header, name, column.Kind, out var rest))
                {
                    continue;
                }

                if (rest.Length == 0 || column.Kind!.Find(rest) is not null)
                {
                    unit = rest;
                    return column;
                }

                if (found is null)
                {
                    (found, unit) = (column, rest);
                }
            }
        }

        return found;
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
