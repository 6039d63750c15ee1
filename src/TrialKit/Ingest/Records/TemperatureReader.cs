using System.Collections.Immutable;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Records;

/// <summary>Reads a table of temperatures: the extremes of each day, or a temperature for each hour or oftener.</summary>
/// <param name="source">Where tables are.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class TemperatureReader(TableSource source, ProblemList problems)
{
    private const double LowestCelsius = -60;
    private const double HighestCelsius = 60;

    /// <summary>Reads a table.</summary>
    /// <param name="name">The table.</param>
    /// <param name="file">The file, when another than the table's own is named.</param>
    public TemperatureRecords Read(string name, string? file = null)
    {
        var table = source.Open(name, Schema.Weather, file);
        if (table is null)
        {
            return TemperatureRecords.None;
        }

        var isDaily = table[Schema.Maximum].Exists && table[Schema.Minimum].Exists;
        if (!isDaily && !table[Schema.Temperature].Exists)
        {
            problems.Add(WeatherProblems.NoTemperatures(table.Raw.LocateHeader(0)));
            return TemperatureRecords.None;
        }

        var cells = new CellReader(table, source.Dates, problems);
        var before = problems.Errors;
        var days = isDaily ? ReadDays(table, cells) : HourlyReader.Read(table, cells, this, problems);

        // A series with errors has holes where they stand: it is not asked for missing days.
        var series = problems.Errors == before ? TemperatureSeries.Of(table.Raw.Start.File, days.Days) : null;
        return new TemperatureRecords(series, table.Raw.Start, new TableRows(name, table.Raw.Start.File, table.Raw.RowCount, days.Rows, days.LeftOut));
    }

    /// <summary>A temperature of a cell that is recorded; null with an error added when it is none or outlandish.</summary>
    public Temperature? Temperature(int row, BoundColumn column, CellReader cells)
    {
        if (cells.Number(row, column) is not { } value)
        {
            return null;
        }

        var temperature = UnitKinds.ToTemperature(value, column.Unit!);
        if (temperature.DegreesCelsius is >= LowestCelsius and <= HighestCelsius)
        {
            return temperature;
        }

        problems.Add(WeatherProblems.Outlandish(cells.At(row, column), column.Header, cells.Written(row, column), temperature.DegreesCelsius));
        return null;
    }

    private DayRecords ReadDays(BoundTable table, CellReader cells)
    {
        var days = ImmutableArray.CreateBuilder<DailyTemperature>();
        var seen = new HashSet<DateOnly>();
        DateOnly? before = null;
        var leftOut = 0;
        for (var row = 0; row < table.Raw.RowCount; row++)
        {
            if (!table.Raw.IsWhole(row))
            {
                continue;
            }

            var time = cells.Require(row, table[Schema.Time]) ? cells.Date(row, table[Schema.Time]) : null;
            var maximum = Temperature(row, table[Schema.Maximum], cells);
            var minimum = Temperature(row, table[Schema.Minimum], cells);
            if (time is not { } moment)
            {
                continue;
            }

            var day = DateOnly.FromDateTime(moment);
            if (!seen.Add(day))
            {
                problems.Add(WeatherProblems.DayAgain(cells.At(row, table[Schema.Time]), day));
            }
            else if (day < before)
            {
                problems.Add(WeatherProblems.DayOutOfOrder(cells.At(row, table[Schema.Time]), day, before.Value));
            }

            before = day;
            if (Empty(table, cells, row) is { } empty)
            {
                problems.Add(WeatherProblems.NotRecorded(cells.At(row, empty), empty.Header, day));
                leftOut++;
            }
            else if (maximum is { } high && minimum is { } low)
            {
                Add(new DailyTemperature(day, high, low), table, cells, row, days);
            }
        }

        return new DayRecords(days.ToImmutable(), days.Count, leftOut);
    }

    private void Add(DailyTemperature day, BoundTable table, CellReader cells, int row, ImmutableArray<DailyTemperature>.Builder days)
    {
        // Compared as written: 50 F and 10 C are the same, and conversion could set them apart by rounding.
        var (high, low) = (table[Schema.Maximum], table[Schema.Minimum]);
        if (high.Unit == low.Unit ? day.Maximum.Value < day.Minimum.Value : day.Maximum.DegreesCelsius < day.Minimum.DegreesCelsius)
        {
            problems.Add(WeatherProblems.MaximumBelowMinimum(cells.At(row, high), $"{cells.Written(row, high)} {high.Unit}", $"{cells.Written(row, low)} {low.Unit}"));
        }
        else
        {
            days.Add(day);
        }
    }

    private static BoundColumn? Empty(BoundTable table, CellReader cells, int row) =>
        cells.IsEmpty(row, table[Schema.Maximum]) ? table[Schema.Maximum]
        : cells.IsEmpty(row, table[Schema.Minimum]) ? table[Schema.Minimum]
        : null;
}
