using UnitsNet;

namespace TrialKit.Trials;

/// <summary>A place in a strip that was drawn for counting before anyone saw the stand.</summary>
/// <param name="Strip">Where.</param>
/// <param name="Name">The spot's name.</param>
/// <param name="FromStart">Distance from the near end of the strip to the spot's zero.</param>
/// <param name="PlanterRow">The row of the planter, counted from its left; null when not drawn.</param>
/// <param name="Row">Length of row to count; null when not set.</param>
public sealed record PlannedSpot(Strip Strip, string Name, Length FromStart, int? PlanterRow, Length? Row)
{
    /// <summary>The planter pass its row lies in, counted from 1 at the corner; null when not drawn.</summary>
    public int? Pass { get; init; }
}
