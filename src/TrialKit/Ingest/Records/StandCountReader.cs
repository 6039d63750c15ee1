using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;

namespace TrialKit.Ingest.Records;

/// <summary>Reads the table of stand counts.</summary>
/// <param name="source">Where tables are.</param>
/// <param name="strips">The strips.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class StandCountReader(TableSource source, StripIndex strips, ProblemList problems)
{
    private const string Name = "stand-counts";
    private const int MostRows = 1000;

    /// <summary>Reads every row; a row without a count is left out and listed.</summary>
    public RecordTable<StandCount> Read()
    {
        var table = source.Open(Name, Schema.StandCounts);
        var records = new RecordTable<StandCount>(Name, table);
        if (table is null)
        {
            return records;
        }

        var cells = new CellReader(table, source.Dates, problems);
        for (var row = 0; row < table.Raw.RowCount; row++)
        {
            if (table.Raw.IsWhole(row))
            {
                ReadRow(table, cells, row, records);
            }
        }

        return records;
    }

    private void ReadRow(BoundTable table, CellReader cells, int row, RecordTable<StandCount> records)
    {
        var strip = strips.Find(cells, row, table[Schema.Strip]);
        var spot = cells.Name(row, table[Schema.Spot]);
        var date = cells.Date(row, table[Schema.Date]);
        var length = cells.Require(row, table[Schema.RequiredLength]) ? cells.Length(row, table[Schema.RequiredLength], zeroAllowed: false) : null;
        var rows = cells.Count(row, table[Schema.Rows], least: 1, MostRows);
        var planterRow = cells.Count(row, table[Schema.PlanterRow], least: 1, MostRows);
        if (cells.IsEmpty(row, table[Schema.RequiredPlants]))
        {
            problems.Add(TrialProblems.LeftOut(cells.At(row, table[Schema.RequiredPlants]), Schema.RequiredPlants.Name));
            records.LeftOut++;
            return;
        }

        var plants = cells.Count(row, table[Schema.RequiredPlants]);
        if (strip is not null && length is { } along && plants is { } standing)
        {
            records.Add(new StandCount(strip, spot, date is { } day ? DateOnly.FromDateTime(day) : null, along, rows ?? 1, standing, planterRow), row);
        }
    }
}
