using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Heat;

/// <summary>The heat of one day from its extremes.</summary>
/// <remarks>
/// With maximum Tx, minimum Tn and thresholds L and U, all in degrees Fahrenheit: the simple average is max(0, (Tx + Tn)/2 - L);
/// the extremes-clipped rule brings Tx and Tn each within [L, U] and gives their mean less L; sines and triangles are integrated above L, with a cut-off at U.
/// Source: McMaster and Wilhelm 1997, Agric. For. Meteorol. 87:291-300 (the second is their method 2); for the curves docs/methods/heat-units.md.
/// </remarks>
public static class DegreeDays
{
    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Daily degree-days",
        "McMaster & Wilhelm 1997, Agric. For. Meteorol. 87:291-300",
        "docs/methods/heat-units.md");

    /// <summary>The heat of a day.</summary>
    /// <param name="day">The day's extremes, the maximum never below the minimum.</param>
    /// <param name="method">The rule and its thresholds; a double form is counted by its single one here.</param>
    /// <exception cref="ArgumentException">A temperature is not a number, the maximum is below the minimum, or the upper threshold is not above the lower.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rule is none that counts degree-days from extremes.</exception>
    public static HeatSum Of(DailyTemperature day, HeatMethod method)
    {
        ArgumentNullException.ThrowIfNull(method);
        return HeatSum.FromFahrenheitDays(DayGain.Of(day, next: null, method).Whole);
    }

    /// <summary>The heat of a day whose next day is known, as the double forms need.</summary>
    /// <param name="day">The day's extremes.</param>
    /// <param name="next">The next day's.</param>
    /// <param name="method">The rule and its thresholds.</param>
    /// <exception cref="ArgumentException">As for a day alone, or the next day is not the day after.</exception>
    public static HeatSum Of(DailyTemperature day, DailyTemperature next, HeatMethod method)
    {
        ArgumentNullException.ThrowIfNull(method);
        return next.Date == day.Date.AddDays(1)
            ? HeatSum.FromFahrenheitDays(DayGain.Of(day, next, method).Whole)
            : throw new ArgumentException(FormattableString.Invariant($"{next.Date:yyyy-MM-dd} was given as the day after {day.Date:yyyy-MM-dd}."), nameof(next));
    }
}
