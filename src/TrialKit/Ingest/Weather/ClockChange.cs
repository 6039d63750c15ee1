namespace TrialKit.Ingest.Weather;

/// <summary>The change to and from daylight-saving time in hourly records of local time.</summary>
/// <remarks>
/// A record says nothing of it: it is taken for one only where it can be one, in the first hours of a Sunday in March, April, September, October or November,
/// by an hour at most and once a day; and it is always told, so that a slip that looks like one is seen.
/// </remarks>
internal static class ClockChange
{
    private const int LastHour = 3;

    /// <summary>Whether clocks may be changed on a day.</summary>
    public static bool CanBe(DateOnly day) => day is { DayOfWeek: DayOfWeek.Sunday, Month: 3 or 4 or 9 or 10 or 11 };

    /// <summary>Whether a step back in time is that of clocks put back by an hour.</summary>
    public static bool IsBack(DateTime before, DateTime after) =>
        CanBe(DateOnly.FromDateTime(after)) && before.Date == after.Date && before.Hour <= LastHour && before - after <= TimeSpan.FromHours(1);

    /// <summary>Whether the one hour that a day lacks is that of clocks put forward.</summary>
    public static bool IsForward(DateOnly day, int missingHour) => CanBe(day) && missingHour <= LastHour;
}
