using UnitsNet;

namespace TrialKit.Emergence;

/// <summary>How far one plant came up behind others of its spot, by the visits that found them.</summary>
/// <param name="Spot">The spot.</param>
/// <param name="Plant">The plant's name; null where plants were only counted.</param>
/// <param name="Position">Its place on the tape; null when not recorded.</param>
/// <param name="Days">When it was first seen, days after planting.</param>
/// <param name="BehindFirst">Days behind the first plant of its spot, 0 or more.</param>
/// <param name="BehindMedian">Days behind the median plant of its spot; negative when sooner.</param>
/// <param name="BehindNeighbours">Days behind the mean of its two neighbours on the tape; null at the ends and where one of the three was not seen to come up.</param>
public sealed record PlantLag(string Spot, string? Plant, Length? Position, double Days, double BehindFirst, double BehindMedian, double? BehindNeighbours)
{
    /// <summary>Whether the plant is late: more than <see cref="PlantEvenness.LateDays"/> behind the first of its spot.</summary>
    public bool IsLate => BehindFirst > PlantEvenness.LateDays + PlantEvenness.Slack;
}
