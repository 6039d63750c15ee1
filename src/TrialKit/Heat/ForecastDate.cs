namespace TrialKit.Heat;

/// <summary>When a heat sum is reached.</summary>
/// <param name="Date">The day.</param>
/// <param name="DaysAfterPlanting">Days from the midnight that begins the planting day, with the fraction of the day gone.</param>
/// <param name="Kind">What the day itself rests on.</param>
/// <param name="RestsOn">The days counted from planting up to it, by what each rests on.</param>
public sealed record ForecastDate(DateOnly Date, double DaysAfterPlanting, DayKind Kind, DayCounts RestsOn);
