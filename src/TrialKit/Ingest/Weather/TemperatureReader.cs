using System.Collections.Immutable;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Weather;

/// <summary>Reads temperatures: a table of the extremes of each day or of a temperature for each hour or oftener, or a file as weather services hand it out.</summary>
/// <param name="source">Where tables are.</param>
/// <param name="planted">The planting date; null when it is not known.</param>
/// <param name="choices">What the user says of the weather file.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class TemperatureReader(TableSource source, DateOnly? planted, WeatherChoices choices, ProblemList problems)
{
    private const double MissingFromGrid = -999;
    private const string SoilTable = "soil-temperature";
    private const string TenthsOfCelsius = "0.1 C";

    private static readonly Dictionary<string, string> Celsius = new(StringComparer.Ordinal) { ["tmax"] = "C", ["tmin"] = "C" };

    /// <summary>Reads a table.</summary>
    /// <param name="name">The table.</param>
    /// <param name="file">The file, when another than the table's own is named.</param>
    /// <returns>The series, the form in which it was recognised and what became of its rows.</returns>
    public TemperatureRecords Read(string name, string? file = null)
    {
        if (!choices.IsFurther && source.IsSheet(name))
        {
            return source.Open(name, Schema.Weather, file) is { } sheet ? ReadTable(name, sheet, isPadded: false) : TemperatureRecords.None;
        }

        if ((choices.IsFurther ? source.Further(file!) : source.Text(name, file)) is not { } text)
        {
            return TemperatureRecords.None;
        }

        var before = problems.Errors;
        var format = WeatherFormats.Detect(text, out var start);
        var station = new StationChoice(choices, problems);
        switch (format)
        {
            case WeatherFormat.StationMonths:
                var (months, monthLines) = StationMonthsReader.Read(text, Gather(name, text, station), problems);
                return Records(name, ProblemLocation.StartOf(text.File), months, monthLines, before, WeatherFormats.Words(format), station);
            case WeatherFormat.StationValues:
                var (values, valueLines) = StationValuesReader.Read(text, Gather(name, text, station), problems);
                return Records(name, ProblemLocation.StartOf(text.File), values, valueLines, before, WeatherFormats.Words(format), station);
            case WeatherFormat.PowerGrid or WeatherFormat.DaymetGrid when name == SoilTable:
                problems.Add(WeatherProblems.NoSoilElements(ProblemLocation.StartOf(text.File), WeatherFormats.Words(format)));
                return TemperatureRecords.None;
            case WeatherFormat.PowerGrid or WeatherFormat.DaymetGrid:
                return CsvTable.Read(text, name, problems, start) is { } rows && source.Bind(rows, Schema.GridWeather, Celsius, passesOverOthers: true) is { } grid
                    ? ReadGrid(name, grid, before, WeatherFormats.Words(format))
                    : TemperatureRecords.None;
            default:
                if (CsvTable.Read(text, name, problems) is not { } raw)
                {
                    return TemperatureRecords.None;
                }

                var isStation = NamesStations(raw);
                if (choices.NeedsSoilElements || (isStation && name == SoilTable))
                {
                    problems.Add(WeatherProblems.NoSoilElements(ProblemLocation.StartOf(text.File), isStation ? "station's table" : "table"));
                    return TemperatureRecords.None;
                }

                var table = source.Bind(raw, Schema.Weather, choices.Units(source.Units), passesOverOthers: isStation);
                return table is null ? TemperatureRecords.None : ReadTable(name, table, text.Bytes.AsSpan().IndexOf(",\" "u8) >= 0);
        }
    }

    private StationDays Gather(string name, Utf8Text text, StationChoice station) =>
        new(text, planted, name == SoilTable ? choices.SoilDepth : null, station, problems);

    private static bool NamesStations(RawTable raw) =>
        raw.HasHeader && Enumerable.Range(0, raw.ColumnCount).Any(column => string.Equals(raw.Header(column).Trim(), Schema.StationName.Name, StringComparison.OrdinalIgnoreCase));

    private TemperatureRecords ReadTable(string name, BoundTable table, bool isPadded)
    {
        var isDaily = table[Schema.Maximum].Exists && table[Schema.Minimum].Exists;
        if (!isDaily && !table[Schema.Temperature].Exists)
        {
            problems.Add(WeatherProblems.NoTemperatures(table.Raw.LocateHeader(0)));
            return TemperatureRecords.None;
        }

        var cells = new CellReader(table, source.Dates, problems);
        var before = problems.Errors;
        var station = new StationChoice(choices, problems);
        if (isPadded && table[Schema.MaximumFlags].Exists && table[Schema.Maximum].Unit is { } unit and not TenthsOfCelsius)
        {
            problems.Add(WeatherProblems.PaddedTenths(table.Raw.LocateHeader(table[Schema.Maximum].Index), unit));
        }

        var days = isDaily
            ? ReadDays(new DayColumns(table, Schema.Maximum, Schema.Minimum), cells, row => DateOf(table, cells, row), station)
            : HourlyReader.Read(table, cells, this, station, problems);
        station.Finish(table.Raw.Start);
        var form = (isDaily, table[Schema.StationName].Exists) switch
        {
            (true, true) => "station's table, a day a row",
            (true, false) => "table of days",
            _ => "table of hours",
        };
        return Records(name, table.Raw.Start, days, table.Raw.RowCount, before, form, station);
    }

    private TemperatureRecords ReadGrid(string name, BoundTable table, int before, string form)
    {
        var cells = new CellReader(table, source.Dates, problems);
        var days = ReadDays(new DayColumns(table, Schema.GridMaximum, Schema.GridMinimum), cells, row => GridDays.Of(table, cells, row, problems), station: null);
        return Records(name, table.Raw.Start, days, table.Raw.RowCount, before, form, station: null);
    }

    /// <summary>The series of days without errors. One with errors has holes where they stand: it is not asked for missing days.</summary>
    private TemperatureRecords Records(string name, ProblemLocation start, DayRecords days, int rows, int errorsBefore, string form, StationChoice? station) => new(
        problems.Errors == errorsBefore ? Series(start, days) : null,
        start,
        new TableRows(name, start.File, rows, days.Rows, days.LeftOut) { Form = form, PassedOver = days.PassedOver })
    {
        Form = form,
        Station = station?.Station,
    };

    private TemperatureSeries Series(ProblemLocation start, DayRecords days)
    {
        var series = TemperatureSeries.Of(start.File, days.Days).WithHours(days.Hours);
        if (choices.Fill == 0)
        {
            return series;
        }

        var filled = series.FillGaps(choices.Fill);
        if (!filled.Filled.IsEmpty)
        {
            problems.Add(WeatherProblems.Filled(start, filled.Filled));
        }

        return filled;
    }

    /// <summary>A temperature of a cell that is recorded; null with an error added when it is none or outlandish.</summary>
    public Temperature? Temperature(int row, BoundColumn column, CellReader cells)
    {
        if (cells.Number(row, column) is not { } value)
        {
            return null;
        }

        var temperature = UnitKinds.ToTemperature(value, column.Unit!);
        if (temperature.DegreesCelsius is >= TemperatureLimits.LowestCelsius and <= TemperatureLimits.HighestCelsius)
        {
            return temperature;
        }

        problems.Add(WeatherProblems.Outlandish(cells.At(row, column), column.Header, cells.Written(row, column), temperature.DegreesCelsius));
        return null;
    }

    private DayRecords ReadDays(DayColumns columns, CellReader cells, Func<int, DateOnly?> dayOf, StationChoice? station)
    {
        var raw = columns.Table.Raw;
        var days = ImmutableArray.CreateBuilder<DailyTemperature>();
        var seen = new HashSet<DateOnly>();
        DateOnly? before = null;
        var (leftOut, passedOver) = (0, 0);
        for (var row = 0; row < raw.RowCount; row++)
        {
            if (!raw.IsWhole(row))
            {
                continue;
            }

            var at = row;
            if (cells.Text(row, columns.Table[Schema.StationName]) is { } name && station?.IsRead(name.Trim(), () => raw.LocateRow(at)) == false)
            {
                passedOver++;
                continue;
            }

            var date = dayOf(row);
            if (date is not { } day)
            {
                continue;
            }

            if (!seen.Add(day))
            {
                problems.Add(WeatherProblems.DayAgain(raw.LocateRow(row), day));
            }
            else if (day < before)
            {
                problems.Add(WeatherProblems.DayOutOfOrder(raw.LocateRow(row), day, before.Value));
            }

            before = day;
            if (IsLeftOut(columns, cells, row, day))
            {
                leftOut++;
                continue;
            }

            var maximum = Temperature(row, columns.Maximum, cells);
            var minimum = Temperature(row, columns.Minimum, cells);
            if (maximum is { } high && minimum is { } low)
            {
                Add(new DailyTemperature(day, high, low), columns, cells, row, days);
            }
        }

        return new DayRecords(days.ToImmutable(), days.Count, leftOut) { PassedOver = passedOver };
    }

    private static DateOnly? DateOf(BoundTable table, CellReader cells, int row) =>
        cells.Require(row, table[Schema.Time]) && cells.Date(row, table[Schema.Time]) is { } moment ? DateOnly.FromDateTime(moment) : null;

    /// <summary>Whether a temperature is not recorded or failed a check; a warning lists it.</summary>
    private bool IsLeftOut(DayColumns columns, CellReader cells, int row, DateOnly day)
    {
        foreach (var (column, flags) in columns.Both)
        {
            if (cells.IsEmpty(row, column) || (columns.IsGrid && cells.Is(row, column, MissingFromGrid)))
            {
                problems.Add(WeatherProblems.NotRecorded(cells.At(row, column), column.Header, day));
                return true;
            }

            // The attributes of a value are its measurement, quality and source flags, with commas between them.
            if (cells.Text(row, flags)?.Split(',') is [_, { } quality, ..] && quality.Trim().Length > 0)
            {
                problems.Add(WeatherProblems.FailedCheck(cells.At(row, column), column.Header, day, quality.Trim()));
                return true;
            }
        }

        return false;
    }

    private void Add(DailyTemperature day, DayColumns columns, CellReader cells, int row, ImmutableArray<DailyTemperature>.Builder days)
    {
        // Compared as written: 50 F and 10 C are the same, and conversion could set them apart by rounding.
        var (high, low) = (columns.Maximum, columns.Minimum);
        if (high.Unit == low.Unit ? day.Maximum.Value < day.Minimum.Value : day.Maximum.DegreesCelsius < day.Minimum.DegreesCelsius)
        {
            problems.Add(WeatherProblems.MaximumBelowMinimum(cells.At(row, high), $"{cells.Written(row, high)} {high.Unit}", $"{cells.Written(row, low)} {low.Unit}"));
        }
        else
        {
            days.Add(day);
        }
    }
}
