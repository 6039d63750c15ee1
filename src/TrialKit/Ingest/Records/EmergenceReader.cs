using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Records;

/// <summary>Reads the table of visits to flagged spots.</summary>
/// <param name="source">Where tables are.</param>
/// <param name="strips">The strips.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class EmergenceReader(TableSource source, StripIndex strips, ProblemList problems)
{
    private const string Name = "emergence";

    // Strips are the index's own objects and spot names are compared like all names.
    private readonly Dictionary<Strip, Dictionary<string, SpotDraft>> _spots = new(ReferenceEqualityComparer.Instance);
    private readonly List<SpotDraft> _order = [];
    private (Strip? Strip, string? Name, SpotDraft? Spot) _last;

    /// <summary>Reads every row into the spots it belongs to; a row without a count is left out and listed.</summary>
    public SpotRecords Read()
    {
        var table = source.Open(Name, Schema.Emergence);
        if (table is not null)
        {
            CheckHeader(table);
            table = table.IsSound ? table : null;
        }

        var records = new SpotRecords(new RecordTable<EmergenceSpot>(Name, table))
        {
            CountColumn = table?[Schema.NewPlants].Exists == true ? Schema.NewPlants : Schema.Plants,
        };
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

        foreach (var spot in _order.Where(spot => spot.VisitRows.Count > 0))
        {
            records.Add(spot.Build(), spot);
        }

        return records;
    }

    private void CheckHeader(BoundTable table)
    {
        var (standing, added) = (table[Schema.Plants].Exists, table[Schema.NewPlants].Exists);
        if (standing && added)
        {
            table.Fault(problems, TableProblems.BothColumns(table.Raw.LocateHeader(table[Schema.NewPlants].Index), Schema.Plants.Name, Schema.NewPlants.Name));
        }
        else if (!standing && !added)
        {
            table.Fault(problems, TableProblems.MissingOneOf(table.Raw.LocateHeader(0), Schema.Plants.Name, Schema.NewPlants.Name));
        }
    }

    private void ReadRow(BoundTable table, CellReader cells, int row, SpotRecords records)
    {
        var strip = strips.Find(cells, row, table[Schema.Strip]);
        var name = cells.Require(row, table[Schema.RequiredSpot]) ? cells.Name(row, table[Schema.RequiredSpot]) : null;
        var date = cells.Require(row, table[Schema.RequiredDate]) ? cells.Date(row, table[Schema.RequiredDate]) : null;
        var length = cells.Length(row, table[Schema.Length], zeroAllowed: false);
        var seeds = cells.Count(row, table[Schema.Seeds], least: 1);
        var isNew = table[Schema.NewPlants].Exists;
        var column = table[isNew ? Schema.NewPlants : Schema.Plants];
        var plants = cells.Count(row, column);
        var isEmpty = cells.IsEmpty(row, column);
        if (isEmpty)
        {
            problems.Add(isNew
                ? TrialProblems.NewPlantsNotRecorded(cells.At(row, column), column.Header)
                : TrialProblems.LeftOut(cells.At(row, column), column.Header));
            records.Spots.LeftOut += isNew ? 0 : 1;
        }

        if (strip is null || name is null)
        {
            return;
        }

        var spot = SpotOf(strip, name);
        SetLength(spot, length, table, cells, row);
        SetSeeds(spot, seeds, table, cells, row);
        if (date is not { } at || plants is not { } count)
        {
            spot.IsPartial |= date is null || !isEmpty;
        }
        else if (isNew)
        {
            spot.AddNew(at, count, row);
        }
        else
        {
            spot.AddStanding(at, count, row);
        }
    }

    private SpotDraft SpotOf(Strip strip, string name)
    {
        // Visits to one spot mostly follow each other.
        if (ReferenceEquals(_last.Strip, strip) && ReferenceEquals(_last.Name, name))
        {
            return _last.Spot!;
        }

        if (!_spots.TryGetValue(strip, out var spots))
        {
            spots = new Dictionary<string, SpotDraft>(Identifier.Comparer);
            _spots.Add(strip, spots);
        }

        if (!spots.TryGetValue(name, out var spot))
        {
            spot = new SpotDraft(strip, name);
            spots.Add(name, spot);
            _order.Add(spot);
        }

        _last = (strip, name, spot);
        return spot;
    }

    private void SetLength(SpotDraft spot, Length? length, BoundTable table, CellReader cells, int row)
    {
        if (length is not { } value)
        {
            return;
        }

        spot.Length ??= (value, row);
        if (spot.Length.Value.Value.Meters != value.Meters)
        {
            Differs(table[Schema.Length], cells, row, spot.Length.Value.Row);
        }
    }

    private void SetSeeds(SpotDraft spot, int? seeds, BoundTable table, CellReader cells, int row)
    {
        if (seeds is not { } value)
        {
            return;
        }

        spot.Seeds ??= (value, row);
        if (spot.Seeds.Value.Value != value)
        {
            Differs(table[Schema.Seeds], cells, row, spot.Seeds.Value.Row);
        }
    }

    private void Differs(BoundColumn column, CellReader cells, int row, int earlier) =>
        problems.Add(TrialProblems.SpotDiffers(cells.At(row, column), column.Header, cells.Written(row, column), cells.Written(earlier, column)));
}
