using TrialKit.Ingest.Tables;
using TrialKit.Trials;

namespace TrialKit.Ingest.Records;

/// <summary>The flagged spots with the row of each visit.</summary>
/// <param name="spots">The spots, each with the row of its first visit.</param>
internal sealed class SpotRecords(RecordTable<EmergenceSpot> spots)
{
    private readonly Dictionary<EmergenceSpot, SpotDraft> _drafts = new(ReferenceEqualityComparer.Instance);

    /// <summary>The spots.</summary>
    public RecordTable<EmergenceSpot> Spots => spots;

    /// <summary>Visits of all spots.</summary>
    public int Visits { get; private set; }

    /// <summary>The column that counts plants: all that stand, or the new ones.</summary>
    public Column CountColumn { get; init; } = Schema.Plants;

    /// <summary>Adds a spot.</summary>
    public void Add(EmergenceSpot spot, SpotDraft draft)
    {
        Spots.Add(spot, draft.VisitRows[0]);
        _drafts.Add(spot, draft);
        Visits += spot.Visits.Length;
    }

    /// <summary>Whether a row of the spot had an error, so that its visits are not all here.</summary>
    public bool IsPartial(EmergenceSpot spot) => _drafts[spot].IsPartial;

    /// <summary>Where a cell of a visit stands.</summary>
    public ProblemLocation At(EmergenceSpot spot, int visit, Column column) => Spots.At(_drafts[spot].VisitRows[visit], column);
}
