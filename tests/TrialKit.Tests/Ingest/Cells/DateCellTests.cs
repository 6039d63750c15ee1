using System.Globalization;
using System.Text;
using TrialKit.Ingest.Cells;

namespace TrialKit.Tests.Ingest.Cells;

public class DateCellTests
{
    [Theory]
    [InlineData("2026-05-04", "Iso", "2026-05-04T00:00:00")]
    [InlineData("2026-05-04 17:30", "Iso", "2026-05-04T17:30:00")]
    [InlineData("2026-05-04T07:30:15", "Iso", "2026-05-04T07:30:15")]
    [InlineData("2028-02-29", "Iso", "2028-02-29T00:00:00")]
    [InlineData("2026-05-04", "MonthDayYear", "2026-05-04T00:00:00")]
    [InlineData("5/4/2026", "MonthDayYear", "2026-05-04T00:00:00")]
    [InlineData("5/4/2026", "DayMonthYear", "2026-04-05T00:00:00")]
    [InlineData("04.05.2026 6:05", "DayMonthYear", "2026-05-04T06:05:00")]
    public void Read_Date_IsItsMoment(string text, string order, string expected)
    {
        Assert.Equal(DateResult.Date, DateCell.Read(Encoding.UTF8.GetBytes(text), Enum.Parse<DateOrder>(order), out var value));
        Assert.Equal(expected, value.ToString("s", CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("2026-02-29", "Iso")]
    [InlineData("2026-13-01", "Iso")]
    [InlineData("2026-00-10", "Iso")]
    [InlineData("0000-01-01", "Iso")]
    [InlineData("2026-05-04 24:00", "Iso")]
    [InlineData("2026-05-04 12:60", "Iso")]
    [InlineData("13/1/2026", "MonthDayYear")]
    public void Read_DateOfNoCalendar_IsTold(string text, string order) =>
        Assert.Equal(DateResult.NoSuchDate, DateCell.Read(Encoding.UTF8.GetBytes(text), Enum.Parse<DateOrder>(order), out _));

    [Theory]
    [InlineData("5/4/2026", "Iso")]
    [InlineData("2026/05/04", "Iso")]
    [InlineData("5/4/26", "MonthDayYear")]
    [InlineData("5/4.2026", "MonthDayYear")]
    [InlineData("2026-5-4", "Iso")]
    [InlineData("20260504", "Iso")]
    [InlineData("2026-05-04 noon", "Iso")]
    [InlineData("2026-05-04 1730", "Iso")]
    [InlineData("May 4", "Iso")]
    [InlineData("", "Iso")]
    [InlineData(" ", "Iso")]
    public void Read_AnythingElse_IsNoDate(string text, string order) =>
        Assert.Equal(DateResult.NotDate, DateCell.Read(Encoding.UTF8.GetBytes(text), Enum.Parse<DateOrder>(order), out _));
}
