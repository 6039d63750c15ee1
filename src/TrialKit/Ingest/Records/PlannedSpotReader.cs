using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;

namespace TrialKit.Ingest.Records;

/// <summary>Reads the table of spots that were drawn before the stand was seen.</summary>
/// <param name="source">Where tables are.</param>
/// <param name="strips">The strips.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class PlannedSpotReader(TableSource source, StripIndex strips, ProblemList problems)
{
    private const string Name = "spots";
    private const int MostRows = 1000;
    private const int MostPasses = 10_000;

    /// <summary>Reads every row.</summary>
    public RecordTable<PlannedSpot> Read()
    {
        var table = source.Open(Name, Schema.Spots);
        var records = new RecordTable<PlannedSpot>(Name, table);
        if (table is null)
        {
            return records;
        }

        var cells = new CellReader(table, source.Dates, problems);
        var known = new HashSet<(Strip, string)>();
        for (var row = 0; row < table.Raw.RowCount; row++)
        {
            if (table.Raw.IsWhole(row) && ReadRow(table, cells, row) is { } spot)
            {
                if (known.Add((spot.Strip, spot.Name.ToUpperInvariant())))
                {
                    records.Add(spot, row);
                }
                else
                {
                    problems.Add(TrialProblems.PlannedSpotTwice(cells.At(row, table[Schema.RequiredSpot]), spot.Name, spot.Strip.Name));
                }
            }
        }

        return records;
    }

    private PlannedSpot? ReadRow(BoundTable table, CellReader cells, int row)
    {
        var strip = strips.Find(cells, row, table[Schema.Strip]);
        var name = cells.Require(row, table[Schema.RequiredSpot]) ? cells.Name(row, table[Schema.RequiredSpot]) : null;
        var from = cells.Require(row, table[Schema.FromStart]) ? cells.Length(row, table[Schema.FromStart], zeroAllowed: true) : null;
        var planterRow = cells.Count(row, table[Schema.PlanterRow], least: 1, MostRows);
        var pass = cells.Count(row, table[Schema.Pass], least: 1, MostPasses);
        var length = cells.Length(row, table[Schema.Length], zeroAllowed: false);
        return strip is null || name is null || from is null ? null : new PlannedSpot(strip, name, from.Value, planterRow, length) { Pass = pass };
    }
}
