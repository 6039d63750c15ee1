using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Records;

/// <summary>A flagged spot while its visits are read.</summary>
/// <param name="strip">Where.</param>
/// <param name="name">The spot's name.</param>
internal sealed class SpotDraft(Strip strip, string name)
{
    private readonly List<EmergenceVisit> _visits = [];
    private int _standing;

    /// <summary>The row of each visit.</summary>
    public List<int> VisitRows { get; } = [];

    /// <summary>Length of row, with the row that says so.</summary>
    public (Length Value, int Row)? Length { get; set; }

    /// <summary>Seeds sown, with the row that says so.</summary>
    public (int Value, int Row)? Seeds { get; set; }

    /// <summary>Whether a row of the spot had an error.</summary>
    public bool IsPartial { get; set; }

    /// <summary>Adds a visit at which so many plants stood.</summary>
    public void AddStanding(DateTime at, int plants, int row)
    {
        _visits.Add(new EmergenceVisit(at, plants));
        VisitRows.Add(row);
        _standing = plants;
    }

    /// <summary>Adds a visit at which so many plants were new.</summary>
    public void AddNew(DateTime at, int plants, int row) => AddStanding(at, _standing + plants, row);

    /// <summary>The spot with its visits.</summary>
    public EmergenceSpot Build() => new(strip, name, Length?.Value, Seeds?.Value, [.. _visits]);
}
