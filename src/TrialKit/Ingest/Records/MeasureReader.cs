using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;

namespace TrialKit.Ingest.Records;

/// <summary>Reads the table of other strip values.</summary>
/// <param name="source">Where tables are.</param>
/// <param name="strips">The strips.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class MeasureReader(TableSource source, StripIndex strips, ProblemList problems)
{
    private const string Name = "measures";

    /// <summary>Reads every row; a row without a value is left out and listed.</summary>
    public RecordTable<StripMeasurement> Read()
    {
        var table = source.Open(Name, Schema.Measures);
        var records = new RecordTable<StripMeasurement>(Name, table);
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

    private void ReadRow(BoundTable table, CellReader cells, int row, RecordTable<StripMeasurement> records)
    {
        var strip = strips.Find(cells, row, table[Schema.Strip]);
        var spot = cells.Name(row, table[Schema.Spot]);
        var measure = cells.Require(row, table[Schema.Measure]) ? cells.Name(row, table[Schema.Measure]) : null;
        var value = cells.Number(row, table[Schema.Value]);
        var unit = cells.Text(row, table[Schema.Unit]);
        if (cells.IsEmpty(row, table[Schema.Value]))
        {
            problems.Add(TrialProblems.LeftOut(cells.At(row, table[Schema.Value]), table[Schema.Value].Header));
            records.LeftOut++;
        }
        else if (strip is not null && measure is not null && value is { } number)
        {
            records.Add(new StripMeasurement(strip, spot, measure, number, unit), row);
        }
    }
}
