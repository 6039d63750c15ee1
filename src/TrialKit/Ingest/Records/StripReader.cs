using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Settings;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;

namespace TrialKit.Ingest.Records;

/// <summary>Reads the table of strips.</summary>
/// <param name="settings">The treatments and the planting date.</param>
/// <param name="source">Where tables are.</param>
/// <param name="strips">Takes every strip that has a name, sound or not, so that a fault here is not reported again wherever the strip is mentioned.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class StripReader(TrialSettings settings, TableSource source, StripIndex strips, ProblemList problems)
{
    private const string Name = "strips";
    private const int MostRows = 1000;

    /// <summary>Reads every row.</summary>
    public RecordTable<Strip> Read()
    {
        // Where the room is described and strips are yet to be drawn, their table may come later.
        if (!source.Has(Name) && settings.Field is null)
        {
            problems.Add(FileProblems.Missing(TableSource.FileOf(Name), "the table of strips was expected in the folder or as a sheet of trial.xlsx"));
        }

        var table = source.Open(Name, Schema.Strips);
        var records = new RecordTable<Strip>(Name, table);
        strips.IsKnown = table is not null;
        if (table is null)
        {
            return records;
        }

        var cells = new CellReader(table, source.Dates, problems);
        for (var row = 0; row < table.Raw.RowCount; row++)
        {
            if (!table.Raw.IsWhole(row))
            {
                if (table.Raw.Text(row, table[Schema.Strip].Index) is { Length: > 0 } known)
                {
                    strips.Add(Known(known));
                }
            }
            else if (ReadRow(table, cells, row) is { } strip)
            {
                records.Add(strip, row);
            }
        }

        return records;
    }

    private Strip? ReadRow(BoundTable table, CellReader cells, int row)
    {
        var name = cells.Require(row, table[Schema.Strip]) ? cells.Name(row, table[Schema.Strip]) : null;
        var block = cells.Require(row, table[Schema.Block]) ? cells.Name(row, table[Schema.Block]) : null;
        var treatment = ReadTreatment(table, cells, row);
        var planted = cells.Date(row, table[Schema.Planted]);
        var strip = new Strip(
            name ?? string.Empty,
            block ?? string.Empty,
            treatment ?? Unknown,
            cells.Count(row, table[Schema.Order], least: 1),
            cells.Length(row, table[Schema.Length], zeroAllowed: false),
            cells.Length(row, table[Schema.Width], zeroAllowed: false),
            cells.Count(row, table[Schema.Rows], least: 1, MostRows),
            planted is { } day ? DateOnly.FromDateTime(day) : settings.PlantingDate ?? DateOnly.MinValue,
            cells.Text(row, table[Schema.LeftOut]),
            cells.Text(row, table[Schema.Note]));
        if (name is null)
        {
            return null;
        }

        strips.Add(strip);
        return block is null || treatment is null ? null : strip;
    }

    private Treatment? ReadTreatment(BoundTable table, CellReader cells, int row)
    {
        var column = table[Schema.Treatment];
        if (!cells.Require(row, column) || cells.Name(row, column) is not { } name)
        {
            return null;
        }

        var treatment = settings.Treatments.FirstOrDefault(candidate => Identifier.Same(candidate.Name, name));
        if (treatment is null && settings.KnowsTreatments)
        {
            problems.Add(TrialProblems.UnknownTreatment(cells.At(row, column), name, [.. settings.Treatments.Select(candidate => candidate.Name)]));
        }

        return treatment;
    }

    private static Treatment Unknown { get; } = new(string.Empty, string.Empty, Cost: null, Products: []);

    private Strip Known(string name) =>
        new(name, string.Empty, Unknown, Order: null, Length: null, Width: null, Rows: null, settings.PlantingDate ?? DateOnly.MinValue, LeftOut: null, Note: null);
}
