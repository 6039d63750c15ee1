using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Planning;

/// <summary>One place to stop at on the way through the strips.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Spot">The spot's name.</param>
/// <param name="FromStart">Distance from the near end of the strip; null when it was not drawn.</param>
/// <param name="PlanterRow">The row of the planter, counted from its left; null when it was not drawn.</param>
/// <param name="Row">Length of row to count when the stand is final.</param>
public sealed record WalkStop(Strip Strip, string Spot, Length? FromStart, int? PlanterRow, Length Row)
{
    /// <summary>The planter pass the row lies in, counted from 1 at the corner; null when it was not drawn.</summary>
    public int? Pass { get; init; }

    /// <summary>Rows of that length side by side that are counted together.</summary>
    public int Rows { get; init; } = 1;

    /// <summary>Length of row to watch at visits.</summary>
    public Length Watched { get; init; } = Row;
}
