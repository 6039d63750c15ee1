namespace TrialKit.Heat;

/// <summary>When a heat sum is reached.</summary>
/// <param name="Date">The day.</param>
/// <param name="DaysAfterPlanting">Days from the midnight that begins the planting day, with the fraction of the day gone.</param>
/// <param name="Kind">What the day itself rests on.</param>
/// <param name="Uncertain">Days from planting up to it that were not observed: filled, forecast or normal.</param>
public sealed record ForecastDate(DateOnly Date, double DaysAfterPlanting, DayKind Kind, int Uncertain);
