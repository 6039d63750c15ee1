using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Ingest.Toml;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads <c>[units]</c>: the unit of a column wherever its header has none, or of one table's column under <c>[units.TABLE]</c>.</summary>
internal static class ColumnUnitsReader
{
    /// <summary>Reads the section.</summary>
    /// <returns>Units by <c>column</c> or <c>table.column</c>.</returns>
    public static Dictionary<string, string> Read(TomlSection section, ProblemList problems)
    {
        var units = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (table, columns) in Schema.Tables.Where(table => section.IsSection(table.Table)))
        {
            Read(section.Section(table, $"[units.{table}]")!, columns, $"{table}.", units, problems);
        }

        Read(section, [.. Schema.Tables.SelectMany(table => table.Columns)], string.Empty, units, problems, reserved: "report");
        return units;
    }

    private static void Read(
        TomlSection section, IReadOnlyList<Column> columns, string prefix, Dictionary<string, string> units, ProblemList problems, string? reserved = null)
    {
        var kinds = new Dictionary<string, UnitKind>(StringComparer.Ordinal);
        foreach (var column in columns)
        {
            if (column.Kind is { } kind)
            {
                kinds.TryAdd(column.Name, kind);
            }
        }

        foreach (var (key, at) in section.Keys.Where(entry => entry.Key != reserved && !section.IsSection(entry.Key)))
        {
            if (!kinds.TryGetValue(key, out var kind))
            {
                problems.Add(TomlProblems.NoUnitColumn(at, key, [.. kinds.Keys]));
                continue;
            }

            if (section.Text(key) is not { } text)
            {
                continue;
            }

            if (kind.Find(text) is { } unit)
            {
                units[prefix + key] = unit;
            }
            else
            {
                problems.Add(TomlProblems.UnknownUnit(section.At(key), key, text, kind.Units));
            }
        }
    }
}
