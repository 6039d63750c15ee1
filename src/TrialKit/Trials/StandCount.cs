using UnitsNet;

namespace TrialKit.Trials;

/// <summary>One count of standing plants along a length of row.</summary>
/// <param name="Strip">Where.</param>
/// <param name="Spot">The spot within the strip; null when the strip was counted at one place only.</param>
/// <param name="Date">When; null when not recorded.</param>
/// <param name="Row">Length of row counted.</param>
/// <param name="Rows">Number of rows counted together over that length, 1 or more.</param>
/// <param name="Plants">Plants standing.</param>
/// <param name="PlanterRow">The planter's row unit; null when not recorded.</param>
public sealed record StandCount(Strip Strip, string? Spot, DateOnly? Date, Length Row, int Rows, int Plants, int? PlanterRow)
{
    /// <summary>Length of row counted, of all rows together.</summary>
    public Length TotalRow => Row * Rows;
}
