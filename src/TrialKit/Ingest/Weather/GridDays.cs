using System.Globalization;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest.Weather;

/// <summary>The dates of grid data: a year with a month and day, or with the day of the year.</summary>
internal static class GridDays
{
    /// <summary>The date of a row; null with an error added when there is none.</summary>
    public static DateOnly? Of(BoundTable table, CellReader cells, int row, ProblemList problems)
    {
        var year = cells.Count(row, table[Schema.Year], least: 1, most: 9998);
        var month = cells.Count(row, table[Schema.Month], least: 1);
        var day = cells.Count(row, table[Schema.Day], least: 1);
        var dayOfYear = cells.Count(row, table[Schema.DayOfYear], least: 1);
        if (year is { } known && dayOfYear is { } number && number <= (DateTime.IsLeapYear(known) ? 366 : 365))
        {
            return new DateOnly(known, 1, 1).AddDays(number - 1);
        }

        if (year is { } ofYear && month is <= 12 && day is { } ofMonth && ofMonth <= DateTime.DaysInMonth(ofYear, month.Value))
        {
            return new DateOnly(ofYear, month.Value, ofMonth);
        }

        problems.Add(WeatherProblems.NoSuchDay(table.Raw.LocateRow(row), string.Create(CultureInfo.InvariantCulture, $"{year} {month}{dayOfYear} {day}").Trim()));
        return null;
    }
}
