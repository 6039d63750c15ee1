using System.Collections.Immutable;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>A flagged spot and its visits in the order of time.</summary>
/// <param name="Strip">Where.</param>
/// <param name="Spot">The spot's name within the strip.</param>
/// <param name="Row">Length of row flagged; null when not recorded.</param>
/// <param name="Seeds">Seeds known to have been sown there; null when not known.</param>
/// <param name="Visits">At least one visit.</param>
public sealed record EmergenceSpot(Strip Strip, string Spot, Length? Row, int? Seeds, ImmutableArray<EmergenceVisit> Visits)
{
    /// <summary>Whether it was visited twice or more, so that something is known of when its plants came up.</summary>
    public bool IsTimed => Visits.Length > 1;
}
