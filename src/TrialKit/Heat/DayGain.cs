using TrialKit.Numerics.HeatCurves;
using TrialKit.Trials;

namespace TrialKit.Heat;

/// <summary>What one day gives by a method, whole and up to a moment within it, in the method's own unit: F-days, or crop heat units.</summary>
/// <remarks>A method with a curve gathers along it, hourly readings hour by hour, and any other evenly.</remarks>
internal sealed class DayGain
{
    private const int Halvings = 60;
    private const double Slack = 1e-12;

    private readonly Func<double, double>? upTo;

    private DayGain(DateOnly date, double whole, Func<double, double>? upTo, bool lacksNext)
    {
        (Date, Whole, LacksNext) = (date, whole, lacksNext);
        this.upTo = upTo;
    }

    /// <summary>The day.</summary>
    public DateOnly Date { get; }

    /// <summary>What the whole day gives.</summary>
    public double Whole { get; }

    /// <summary>Whether a double form was counted by the single one, because the next day's minimum is not on record.</summary>
    public bool LacksNext { get; }

    /// <summary>The gain of a day of a series.</summary>
    /// <param name="series">The series.</param>
    /// <param name="index">The day's place in it.</param>
    /// <param name="method">The method.</param>
    /// <returns>Null when the method needs hourly temperatures and the day has none.</returns>
    public static DayGain? Of(TemperatureSeries series, int index, HeatMethod method)
    {
        var day = series.Days[index];
        if (method.Rule == HeatRule.CropHeatUnits)
        {
            return new(day.Date, DayHeat.CropHeatUnits(HeatDegrees.Celsius(day.Minimum), HeatDegrees.Celsius(day.Maximum), method.IsFloored), upTo: null, lacksNext: false);
        }

        if (method.Rule == HeatRule.Hourly)
        {
            return series.Hours.TryGetValue(day.Date, out var hours) ? OfHours(day.Date, [.. hours.Select(HeatDegrees.Fahrenheit)], method) : null;
        }

        var next = index + 1 < series.Days.Length && series.Days[index + 1].Date == day.Date.AddDays(1) ? series.Days[index + 1] : (DailyTemperature?)null;
        return Of(day, next, method);
    }

    /// <summary>The gain of a day from its extremes.</summary>
    /// <param name="day">The day.</param>
    /// <param name="next">The day after, whose minimum the double forms need; null counts them by the single form.</param>
    /// <param name="method">A method that works from extremes.</param>
    public static DayGain Of(DailyTemperature day, DailyTemperature? next, HeatMethod method)
    {
        var (minimum, maximum) = HeatDegrees.Extremes(day);
        var (lower, upper) = HeatDegrees.Thresholds(method);
        switch (method.Rule)
        {
            case HeatRule.SimpleAverage:
                return new(day.Date, DayHeat.SimpleAverage(minimum, maximum, lower), upTo: null, lacksNext: false);
            case HeatRule.MeanClipped:
                return new(day.Date, DayHeat.MeanClipped(minimum, maximum, lower, upper), upTo: null, lacksNext: false);
            case HeatRule.ExtremesClipped:
                return new(day.Date, DayHeat.ExtremesClipped(minimum, maximum, lower, upper), upTo: null, lacksNext: false);
            case HeatRule.SingleSine or HeatRule.SingleTriangle or HeatRule.DoubleSine or HeatRule.DoubleTriangle:
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(method), method.Rule, "The rule of the method does not work from a day's extremes; the simple average, a clipped rule, a sine or a triangle was expected.");
        }

        var shape = method.Rule is HeatRule.SingleSine or HeatRule.DoubleSine ? DayShape.Sine : DayShape.Triangle;
        var cutOff = CutOffOf(method.CutOff);
        var end = method.IsDouble && next is { } tomorrow ? HeatDegrees.Extremes(tomorrow).Minimum : minimum;
        var whole = method.IsDouble && next is not null
            ? DayHeat.Double(shape, cutOff, minimum, maximum, end, lower, upper, floored: true)
            : DayHeat.Single(shape, cutOff, minimum, maximum, lower, upper, floored: true);

        // The tent of the intermediate cut-off is a difference of three sums, which may round to a hair below nothing.
        return new(
            day.Date,
            Math.Max(0, whole),
            fraction => DayHeat.UpTo(shape, cutOff, minimum, maximum, end, lower, upper, fraction, floored: true),
            method.IsDouble && next is null);
    }

    /// <summary>The mean of the gains of one day of the calendar in several years.</summary>
    /// <param name="date">The day it stands for.</param>
    /// <param name="years">The gains by one method, one or more.</param>
    public static DayGain Mean(DateOnly date, DayGain[] years) => new(
        date,
        years.Average(year => year.Whole),
        Array.TrueForAll(years, year => year.upTo is null) ? null : fraction => years.Average(year => year.UpTo(fraction)),
        Array.TrueForAll(years, year => year.LacksNext));

    /// <summary>What the day has given by a fraction of it.</summary>
    public double UpTo(double fraction) => fraction switch
    {
        >= 1 => Whole,
        <= 0 => 0,
        _ => upTo is null ? Whole * fraction : Math.Clamp(upTo(fraction), 0, Whole),
    };

    /// <summary>The first fraction of the day by which an amount, above 0 and up to the whole, was given.</summary>
    public double FractionAt(double amount)
    {
        if (upTo is null)
        {
            return amount / Whole;
        }

        // Hours above a vertical cut-off add nothing: rounding of the sum must not push the moment past them.
        var reached = amount - (Slack * (1 + Whole));
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = 0.5 * (low + high);
            if (UpTo(middle) >= reached)
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        return high;
    }

    private static DayGain OfHours(DateOnly date, double[] hours, HeatMethod method)
    {
        var (lower, upper) = HeatDegrees.Thresholds(method);
        var gains = hours.Select(hour => DayHeat.Hourly([hour], lower, upper) / hours.Length).ToArray();
        return new(date, DayHeat.Hourly(hours, lower, upper), UpToHour, lacksNext: false);

        // A day on which the clock goes forward has 23 hours.
        double UpToHour(double fraction)
        {
            var gone = (int)(fraction * gains.Length);
            return gains.Take(gone).Sum() + (gains[Math.Min(gone, gains.Length - 1)] * ((fraction * gains.Length) - gone));
        }
    }

    private static CutOff CutOffOf(HeatCutOff cutOff) => cutOff switch
    {
        HeatCutOff.None => CutOff.None,
        HeatCutOff.Horizontal => CutOff.Horizontal,
        HeatCutOff.Intermediate => CutOff.Intermediate,
        HeatCutOff.Vertical => CutOff.Vertical,
        _ => throw new ArgumentOutOfRangeException(nameof(cutOff), cutOff, "An unknown cut-off was found; none, horizontal, intermediate or vertical was expected."),
    };
}
