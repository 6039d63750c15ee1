using System.Collections.Immutable;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Weather;

/// <summary>Reads temperatures recorded every hour or oftener into the extremes of each day that has one in each of its hours.</summary>
/// <remarks>A day has 24 hours, or 23 where the clock was put forward; an hour that stands twice because it was put back is one hour, with the mean of its readings.</remarks>
internal static class HourlyReader
{
    private const int HoursPerDay = 24;

    /// <summary>Reads every row of a station; a day that lacks an hour is listed and counts as missing.</summary>
    public static DayRecords Read(BoundTable table, CellReader cells, TemperatureReader reader, StationChoice station, ProblemList problems)
    {
        var days = ImmutableArray.CreateBuilder<DailyTemperature>();
        var hours = new Dictionary<DateOnly, ImmutableArray<Temperature>>();
        var (used, leftOut) = (0, 0);
        Day? current = null;
        DateTime? before = null;
        for (var row = 0; row < table.Raw.RowCount; row++)
        {
            var at = row;
            if (!table.Raw.IsWhole(row) || (cells.Text(row, table[Schema.StationName]) is { } name && !station.IsRead(name.Trim(), () => table.Raw.LocateRow(at))))
            {
                continue;
            }

            var time = cells.Require(row, table[Schema.Time]) ? cells.Date(row, table[Schema.Time]) : null;
            var temperature = reader.Temperature(row, table[Schema.Temperature], cells);
            if (time is not { } moment)
            {
                continue;
            }

            if (moment <= before)
            {
                if (current is not { WentBack: false } || !ClockChange.IsBack(before.Value, moment))
                {
                    problems.Add(WeatherProblems.TimeAgain(cells.At(row, table[Schema.Time]), moment, before.Value));
                    continue;
                }

                current.WentBack = true;
                problems.Add(WeatherProblems.ClockBack(cells.At(row, table[Schema.Time]), moment, before.Value));
            }

            before = moment;
            if (current?.Date != DateOnly.FromDateTime(moment))
            {
                Close(current);
                current = new Day(DateOnly.FromDateTime(moment), row);
            }

            current.Add(moment, temperature);
        }

        Close(current);
        return new DayRecords(days.ToImmutable(), used, leftOut) { Hours = hours };

        void Close(Day? day)
        {
            if (day is null)
            {
                return;
            }

            var missing = day.MissingHours;
            var isForward = missing.Length == 1 && ClockChange.IsForward(day.Date, missing[0]);
            if (missing.Length == 0 || isForward)
            {
                days.Add(new DailyTemperature(day.Date, day.Maximum, day.Minimum));
                hours[day.Date] = day.Means;
                used += day.Rows;
            }
            else
            {
                leftOut += day.Rows;
                problems.Add(WeatherProblems.HoursMissing(cells.At(day.FirstRow, table[Schema.Time]), day.Date, HoursPerDay - missing.Length));
            }

            if (isForward)
            {
                problems.Add(WeatherProblems.ClockForward(cells.At(day.FirstRow, table[Schema.Time]), day.Date, missing[0]));
            }
        }
    }

    /// <summary>One day while its rows are read.</summary>
    private sealed class Day(DateOnly date, int firstRow)
    {
        private readonly double[] _sums = new double[HoursPerDay];
        private readonly int[] _readings = new int[HoursPerDay];

        public DateOnly Date => date;

        public int FirstRow => firstRow;

        public int Rows { get; private set; }

        /// <summary>Whether the clock was put back on it.</summary>
        public bool WentBack { get; set; }

        public int[] MissingHours => [.. Enumerable.Range(0, HoursPerDay).Where(hour => _readings[hour] == 0)];

        public Temperature Maximum { get; private set; }

        public Temperature Minimum { get; private set; }

        /// <summary>The mean of the readings of each hour there was.</summary>
        public ImmutableArray<Temperature> Means => [.. Enumerable.Range(0, HoursPerDay).Where(hour => _readings[hour] > 0).Select(hour => new Temperature(_sums[hour] / _readings[hour], Maximum.Unit))];

        public void Add(DateTime time, Temperature? temperature)
        {
            Rows++;
            if (temperature is not { } value)
            {
                return;
            }

            // One column, one unit: the numbers compare as the temperatures do.
            var isFirst = Array.TrueForAll(_readings, readings => readings == 0);
            Maximum = isFirst || value.Value > Maximum.Value ? value : Maximum;
            Minimum = isFirst || value.Value < Minimum.Value ? value : Minimum;
            _sums[time.Hour] += value.Value;
            _readings[time.Hour]++;
        }
    }
}
