using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Records;

/// <summary>Reads the table of strips weighed.</summary>
/// <param name="source">Where tables are.</param>
/// <param name="strips">The strips.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class HarvestReader(TableSource source, StripIndex strips, ProblemList problems)
{
    private const string Name = "harvest";
    private const double LargestMoisture = 60;

    /// <summary>Reads every row; a row without weight or moisture is left out and listed.</summary>
    public RecordTable<StripHarvest> Read()
    {
        var table = source.Open(Name, Schema.Harvest);
        var records = new RecordTable<StripHarvest>(Name, table);
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

    private void ReadRow(BoundTable table, CellReader cells, int row, RecordTable<StripHarvest> records)
    {
        var strip = strips.Find(cells, row, table[Schema.Strip]);
        var weight = cells.Positive(row, table[Schema.Weight]);
        var moisture = Moisture(table[Schema.Moisture], cells, row);
        var length = cells.Length(row, table[Schema.Length], zeroAllowed: false);
        var width = cells.Length(row, table[Schema.Width], zeroAllowed: false);
        var testWeight = cells.Positive(row, table[Schema.TestWeight]);
        var empty = cells.IsEmpty(row, table[Schema.Weight]) ? Schema.Weight : cells.IsEmpty(row, table[Schema.Moisture]) ? Schema.Moisture : null;
        if (empty is not null)
        {
            problems.Add(TrialProblems.LeftOut(cells.At(row, table[empty]), table[empty].Header));
            records.LeftOut++;
        }
        else if (strip is not null && weight is { } mass && moisture is { } share)
        {
            var density = testWeight is { } measured ? UnitKinds.ToTestWeight(measured, table[Schema.TestWeight].Unit!) : (Density?)null;
            records.Add(new StripHarvest(strip, UnitKinds.ToMass(mass, table[Schema.Weight].Unit!), share, length, width, density), row);
        }
    }

    private Ratio? Moisture(BoundColumn column, CellReader cells, int row)
    {
        if (cells.Number(row, column) is not { } percent)
        {
            return null;
        }

        if (percent is >= 0 and < LargestMoisture)
        {
            return Ratio.FromPercent(percent);
        }

        problems.Add(TableProblems.OutOfRange(cells.At(row, column), column.Header, cells.Written(row, column), "a moisture from 0 to under 60 %"));
        return null;
    }
}
