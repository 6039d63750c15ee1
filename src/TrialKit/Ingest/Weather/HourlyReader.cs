using System.Collections.Immutable;
using System.Numerics;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Weather;

/// <summary>Reads temperatures recorded every hour or oftener into the extremes of each day that has one in each of its 24 hours.</summary>
internal static class HourlyReader
{
    private const int HoursPerDay = 24;

    /// <summary>Reads every row; a day that lacks an hour is listed and counts as missing.</summary>
    public static DayRecords Read(BoundTable table, CellReader cells, TemperatureReader reader, ProblemList problems)
    {
        var days = ImmutableArray.CreateBuilder<DailyTemperature>();
        var hours = new Dictionary<DateOnly, ImmutableArray<Temperature>>();
        var (used, leftOut) = (0, 0);
        Day? current = null;
        DateTime? before = null;
        for (var row = 0; row < table.Raw.RowCount; row++)
        {
            if (!table.Raw.IsWhole(row))
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
                problems.Add(WeatherProblems.TimeAgain(cells.At(row, table[Schema.Time]), moment, before.Value));
                continue;
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

            if (day.Hours == HoursPerDay)
            {
                days.Add(new DailyTemperature(day.Date, day.Maximum, day.Minimum));
                hours[day.Date] = day.Means;
                used += day.Rows;
                return;
            }

            problems.Add(WeatherProblems.HoursMissing(cells.At(day.FirstRow, table[Schema.Time]), day.Date, day.Hours));
            leftOut += day.Rows;
        }
    }

    /// <summary>One day while its rows are read.</summary>
    private sealed class Day(DateOnly date, int firstRow)
    {
        private readonly double[] _sums = new double[HoursPerDay];
        private readonly int[] _readings = new int[HoursPerDay];
        private uint _hours;

        public DateOnly Date => date;

        public int FirstRow => firstRow;

        public int Rows { get; private set; }

        public int Hours => BitOperations.PopCount(_hours);

        public Temperature Maximum { get; private set; }

        public Temperature Minimum { get; private set; }

        /// <summary>The mean of each hour's readings.</summary>
        public ImmutableArray<Temperature> Means => [.. _sums.Select((sum, hour) => new Temperature(sum / _readings[hour], Maximum.Unit))];

        public void Add(DateTime time, Temperature? temperature)
        {
            Rows++;
            if (temperature is not { } value)
            {
                return;
            }

            // One column, one unit: the numbers compare as the temperatures do.
            Maximum = _hours == 0 || value.Value > Maximum.Value ? value : Maximum;
            Minimum = _hours == 0 || value.Value < Minimum.Value ? value : Minimum;
            _sums[time.Hour] += value.Value;
            _readings[time.Hour]++;
            _hours |= 1u << time.Hour;
        }
    }
}
