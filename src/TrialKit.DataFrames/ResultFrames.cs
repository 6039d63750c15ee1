using System.Globalization;
using Microsoft.Data.Analysis;
using TrialKit.Export;

namespace TrialKit.DataFrames;

/// <summary>Results as data frames: the columns of the CSV tables under the same names, null where there is nothing.</summary>
public static class ResultFrames
{
    /// <summary>A result table as a data frame.</summary>
    /// <param name="table">The table.</param>
    /// <returns>A column of whole numbers, of numbers of 64 bits, of true and false or of text for each column; one without any value is of text.</returns>
    /// <exception cref="ArgumentException">A cell holds something else, or one column holds several kinds.</exception>
    public static DataFrame ToDataFrame(this ResultTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return new([.. table.Columns.Select((column, index) => Column(column.Name, [.. table.Rows.Select(row => row[index])]))]);
    }

    /// <summary>One table of an analysis as a data frame.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <param name="table">The table's name, which is that of its CSV file, such as <c>comparisons</c> or <c>strip-values</c>.</param>
    /// <exception cref="ArgumentException">The analysis has no such table; the message names those it has.</exception>
    public static DataFrame ToDataFrame(this TrialAnalysis analysis, string table)
    {
        var tables = ResultTables.Of(analysis);
        return tables.FirstOrDefault(each => each.Name == table)?.ToDataFrame()
            ?? throw new ArgumentException($"There is no table '{table}'; one of {string.Join(", ", tables.Select(each => each.Name))} was expected.", nameof(table));
    }

    /// <summary>Every table of an analysis that has a row, by its name.</summary>
    /// <param name="analysis">The analysis.</param>
    public static IReadOnlyDictionary<string, DataFrame> ToDataFrames(this TrialAnalysis analysis) =>
        ResultTables.Of(analysis).ToDictionary(table => table.Name, table => table.ToDataFrame(), StringComparer.Ordinal);

    private static DataFrameColumn Column(string name, object?[] cells)
    {
        var kinds = cells.OfType<object>().Select(cell => cell.GetType()).Distinct().ToArray();
        return kinds switch
        {
            [] => new StringDataFrameColumn(name, cells.Select(_ => (string?)null)),
            [var kind] when kind == typeof(string) => new StringDataFrameColumn(name, cells.Select(cell => (string?)cell)),
            [var kind] when kind == typeof(int) => new Int32DataFrameColumn(name, cells.Select(cell => (int?)cell)),
            [var kind] when kind == typeof(bool) => new BooleanDataFrameColumn(name, cells.Select(cell => (bool?)cell)),
            _ when Array.TrueForAll(kinds, kind => kind == typeof(double) || kind == typeof(int)) =>
                new DoubleDataFrameColumn(name, cells.Select(cell => cell is null ? (double?)null : Convert.ToDouble(cell, CultureInfo.InvariantCulture))),
            _ => throw new ArgumentException($"Column '{name}' holds {string.Join(" and ", kinds.Select(kind => kind.Name))}; text, numbers, or true and false was expected.", nameof(cells)),
        };
    }
}
