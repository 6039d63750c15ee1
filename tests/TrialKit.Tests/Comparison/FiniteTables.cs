using TrialKit.Export;

namespace TrialKit.Tests.Comparison;

/// <summary>Holds every cell of every written table to being a number where it is one.</summary>
internal static class FiniteTables
{
    public static void Check(TrialAnalysis analysis, string what) => Check(ResultTables.Of(analysis), what);

    public static void Check(IEnumerable<ResultTable> tables, string what)
    {
        foreach (var table in tables)
        {
            foreach (var row in table.Rows)
            {
                for (var column = 0; column < row.Length; column++)
                {
                    Assert.False(row[column] is double number && !double.IsFinite(number), $"{what}: {row[column]} in {table.Name}.{table.Columns[column].Name}");
                    Assert.False(row[column] is string text && (text.Contains("NaN", StringComparison.Ordinal) || text.Contains('∞', StringComparison.Ordinal) || text.Contains("Infinity", StringComparison.Ordinal)), $"{what}: {row[column]} in {table.Name}.{table.Columns[column].Name}");
                }
            }
        }
    }
}
