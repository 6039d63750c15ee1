namespace TrialKit.Heat;

/// <summary>One day of a tally.</summary>
/// <param name="Date">The day.</param>
/// <param name="Units">Its heat units; null when the day is not on record.</param>
/// <param name="Sum">The units of the days on record up to its end: at least the true sum once a day is missing.</param>
/// <param name="IsComplete">Whether no day up to here is missing.</param>
/// <param name="IsFilled">Whether its temperatures, or those of the next day that a double form leans on, were interpolated.</param>
public sealed record HeatTallyDay(DateOnly Date, double? Units, double Sum, bool IsComplete, bool IsFilled);
