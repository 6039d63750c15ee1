using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;

namespace TrialKit.Ingest.Records;

/// <summary>Reads the table of single plants.</summary>
/// <param name="source">Where tables are.</param>
/// <param name="strips">The strips.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class PlantReader(TableSource source, StripIndex strips, ProblemList problems)
{
    private const string Name = "plants";
    private const int MostCollars = 40;

    /// <summary>Reads every row.</summary>
    /// <param name="spots">The spots that the trial's other tables name; a plant of another spot is an error. Null when they name none.</param>
    public RecordTable<Plant> Read(SpotIndex? spots)
    {
        var table = source.Open(Name, Schema.SinglePlants);
        var records = new RecordTable<Plant>(Name, table);
        if (table is null)
        {
            return records;
        }

        var cells = new CellReader(table, source.Dates, problems);
        for (var row = 0; row < table.Raw.RowCount; row++)
        {
            if (table.Raw.IsWhole(row) && ReadRow(table, cells, row, spots) is { } plant)
            {
                records.Add(plant, row);
            }
        }

        return records;
    }

    private Plant? ReadRow(BoundTable table, CellReader cells, int row, SpotIndex? spots)
    {
        var strip = strips.Find(cells, row, table[Schema.Strip]);
        var spot = cells.Require(row, table[Schema.RequiredSpot]) ? cells.Name(row, table[Schema.RequiredSpot]) : null;
        var name = cells.Require(row, table[Schema.Plant]) ? cells.Name(row, table[Schema.Plant]) : null;
        var position = cells.Length(row, table[Schema.Position], zeroAllowed: true);
        var seen = cells.Date(row, table[Schema.FirstSeen]);
        var collars = cells.Count(row, table[Schema.Collars], least: 0, MostCollars);
        var depth = cells.Length(row, table[Schema.Depth], zeroAllowed: true);
        var mesocotyl = cells.Length(row, table[Schema.Mesocotyl], zeroAllowed: true);
        var note = cells.Text(row, table[Schema.Note]);
        if (strip is null || spot is null || name is null)
        {
            return null;
        }

        if (spots is not null && !spots.Contains(strip, spot))
        {
            problems.Add(TrialProblems.UnknownSpot(cells.At(row, table[Schema.RequiredSpot]), spot, strip.Name));
            return null;
        }

        var fate = Fate(note);
        if (fate == PlantFate.Ordinary && note?.Trim() is { Length: 1 } letter && char.IsLetter(letter[0]))
        {
            problems.Add(TrialProblems.UnknownLetter(cells.At(row, table[Schema.Note]), letter));
        }

        return new Plant(strip, spot, name, position, seen, collars, depth, mesocotyl, fate, note);
    }

    private static PlantFate Fate(string? note)
    {
        if (note is null)
        {
            return PlantFate.Ordinary;
        }

        // A letter by itself is what the sheet asks for where there is no room for a word.
        switch (note.Trim().ToUpperInvariant())
        {
            case "D":
                return PlantFate.Double;
            case "V":
                return PlantFate.Volunteer;
            case "X":
                return PlantFate.Died;
        }

        var words = note.Split([' ', ',', ';', '.', ':', '(', ')'], StringSplitOptions.RemoveEmptyEntries);
        return Says("volunteer") ? PlantFate.Volunteer
            : Says("died") ? PlantFate.Died
            : Says("double") ? PlantFate.Double
            : PlantFate.Ordinary;

        bool Says(string word) => words.Contains(word, StringComparer.OrdinalIgnoreCase);
    }
}
