using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Heat;

/// <summary>The heat units of each day between two dates by one method. A day that is missing is missing, never zero.</summary>
public sealed record HeatTally
{
    private HeatTally(HeatMethod method, ImmutableArray<HeatTallyDay> days, ImmutableArray<DateOnly> bySingle) =>
        (Method, Days, BySingle) = (method, days, bySingle);

    /// <summary>The method, whose name belongs beside every figure.</summary>
    public HeatMethod Method { get; }

    /// <summary>Every day of the calendar from the first to the last; units are F-days, or crop heat units.</summary>
    public ImmutableArray<HeatTallyDay> Days { get; }

    /// <summary>Days counted by the single form of a double method, because the next day's minimum is not on record.</summary>
    public ImmutableArray<DateOnly> BySingle { get; }

    /// <summary>Days whose temperatures were interpolated.</summary>
    public IEnumerable<DateOnly> Filled => Days.Where(day => day.IsFilled).Select(day => day.Date);

    /// <summary>Days that are not on record.</summary>
    public IEnumerable<DateOnly> Missing => Days.Where(day => day.Units is null).Select(day => day.Date);

    /// <summary>Whether every day is on record; otherwise <see cref="Total"/> is the least it can be.</summary>
    public bool IsComplete => Days[^1].IsComplete;

    /// <summary>The sum of the days on record.</summary>
    public double Total => Days[^1].Sum;

    /// <summary>The unit in words, such as <c>F-days</c>.</summary>
    public string Unit(UnitSystem units) => !Method.IsDegreeDays ? "CHU" : units == UnitSystem.Us ? "F-days" : "C-days";

    /// <summary>An amount of the days in the unit of a system; crop heat units have one unit only.</summary>
    public double In(double amount, UnitSystem units) => Method.IsDegreeDays && units == UnitSystem.Metric ? amount / HeatSum.FahrenheitPerCelsius : amount;

    /// <summary>Counts the days from one date to another, both included.</summary>
    /// <param name="series">Daily temperatures.</param>
    /// <param name="method">How each day is counted.</param>
    /// <param name="first">The first day.</param>
    /// <param name="last">The last day, not before the first.</param>
    /// <exception cref="ArgumentException">The last day is before the first.</exception>
    public static HeatTally Of(TemperatureSeries series, HeatMethod method, DateOnly first, DateOnly last)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(method);
        if (last < first)
        {
            throw new ArgumentException(FormattableString.Invariant($"The last day, {last:yyyy-MM-dd}, is before the first, {first:yyyy-MM-dd}."), nameof(last));
        }

        var places = series.Days.Select((day, index) => (day.Date, index)).ToDictionary(entry => entry.Date, entry => entry.index);
        var filled = series.Filled.ToHashSet();
        var days = ImmutableArray.CreateBuilder<HeatTallyDay>();
        var bySingle = ImmutableArray.CreateBuilder<DateOnly>();
        var (sum, isComplete) = (0.0, true);
        for (var number = first.DayNumber; number <= last.DayNumber; number++)
        {
            var date = DateOnly.FromDayNumber(number);
            var gain = places.TryGetValue(date, out var index) ? DayGain.Of(series, index, method) : null;
            isComplete &= gain is not null;
            sum += gain?.Whole ?? 0;
            if (gain is { LacksNext: true })
            {
                bySingle.Add(date);
            }

            days.Add(new(date, gain?.Whole, sum, isComplete, filled.Contains(date) || (method.IsDouble && date < DateOnly.MaxValue && filled.Contains(date.AddDays(1)))));
        }

        return new(method, days.ToImmutable(), bySingle.ToImmutable());
    }
}
