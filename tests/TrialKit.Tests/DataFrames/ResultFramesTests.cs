using Microsoft.Data.Analysis;
using TrialKit.DataFrames;
using TrialKit.Export;

namespace TrialKit.Tests.DataFrames;

/// <summary>Results as data frames.</summary>
public class ResultFramesTests
{
    [Fact]
    public void ToDataFrames_OfAnExample_HoldEveryCellOfEveryTable()
    {
        var analysis = TrialAnalysisTests.Example("drag-chains");
        var frames = analysis.ToDataFrames();
        var tables = ResultTables.Of(analysis);

        Assert.Equal(tables.Select(table => table.Name).Order(StringComparer.Ordinal), frames.Keys.Order(StringComparer.Ordinal));
        foreach (var table in tables)
        {
            var frame = frames[table.Name];
            Assert.Equal(table.Columns.Select(column => column.Name), frame.Columns.Select(column => column.Name));
            for (var r = 0; r < table.Rows.Count; r++)
            {
                for (var c = 0; c < table.Columns.Length; c++)
                {
                    var (cell, framed) = (table.Rows[r][c], frame.Columns[c][r]);
                    Assert.Equal(framed is double && cell is int whole ? (double)whole : cell, framed);
                }
            }
        }
    }

    [Fact]
    public void ToDataFrame_ColumnsOfEachKind_KeepTheirTypeAndNothing()
    {
        var table = ResultTable.Of<int?>(
            "case",
            "a row",
            [1, null],
            ("whole", "", row => row),
            ("number", "", row => row is null ? null : 0.5),
            ("mixed", "", row => row is null ? 2 : 0.5),
            ("flag", "", row => row is null ? null : true),
            ("text", "", row => row is null ? null : "a"),
            ("nothing", "", _ => null));
        var frame = table.ToDataFrame();

        Assert.Equal(
            [typeof(Int32DataFrameColumn), typeof(DoubleDataFrameColumn), typeof(DoubleDataFrameColumn), typeof(BooleanDataFrameColumn), typeof(StringDataFrameColumn), typeof(StringDataFrameColumn)],
            frame.Columns.Select(column => column.GetType()));
        Assert.Equal([null, null, 2.0, null, null, null], frame.Columns.Select(column => column[1]));
    }

    [Fact]
    public void ToDataFrame_UnknownTable_NamesThoseThereAre()
    {
        var error = Assert.Throws<ArgumentException>(() => TrialAnalysisTests.Example("drag-chains").ToDataFrame("comparison"));

        Assert.Contains("comparisons, treatment-means", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ToDataFrame_ColumnOfTextAndNumbers_IsRefused() =>
        Assert.Throws<ArgumentException>(() => ResultTable.Of<int>("case", "a row", [0, 1], ("both", "", row => row == 0 ? "a" : 1)).ToDataFrame());
}
