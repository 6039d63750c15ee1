using CsCheck;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Pdf;

namespace TrialKit.Reporting.Tests.Pdf;

public class TableFlowTests
{
    private static readonly Gen<Table> Tables =
        from columns in Gen.Int[1, 14]
        from rows in Gen.String[Gen.Char["aW 1-"], 0, 40].Array[columns].List[0, 4]
        select new Table(
            null,
            [.. Enumerable.Range(1, columns).Select(i => new TableColumn(FormattableString.Invariant($"Head {i}")))],
            [.. rows.Select(row => new TableRow(row))]);

    [Fact]
    public void FitColumns_AnyTable_StaysWithinThePage() =>
        Tables.Sample(table => TableFlow.FitColumns(table, 488) is var (columns, size)
            && size >= 9
            && columns.All(column => column.Width > 0)
            && columns[^1].X + columns[^1].Width <= 488 + 1e-6
            && columns.Zip(columns.Skip(1)).All(pair => pair.First.X + pair.First.Width < pair.Second.X));

    [Fact]
    public void FitColumns_OnlyWordsAndNoRoomForWideGaps_KeepsTheWords()
    {
        // Every width of the page at which words fit with narrow gaps and not with wide ones.
        var table = new Table(null, [.. Enumerable.Range(1, 5).Select(i => new TableColumn(new string('m', 4 + i)))], []);
        var wide = Enumerable.Range(100, 400).Select(width => TableFlow.FitColumns(table, width)).ToArray();

        Assert.All(wide, fit => Assert.All(fit.Columns, column => Assert.True(double.IsFinite(column.X) && column.Width > 0, column.ToString())));
    }

    [Fact]
    public void FitColumns_ShortCells_KeepTheirNaturalWidth()
    {
        var table = new Table(null, [new("Strip"), new("Stand", "plants/ac")], [TableRow.Of("S1", "31,400")]);

        var (columns, _) = TableFlow.FitColumns(table, 488);

        Assert.True(columns[1].X + columns[1].Width < 150, "a small table is not stretched");
    }
}
