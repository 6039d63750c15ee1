using TrialKit.Ingest.Tables;

namespace TrialKit.Tests.Ingest.Tables;

public class HeaderNameTests
{
    [Theory]
    [InlineData("tmax_f", "tmax", "f")]
    [InlineData("Tmax (C)", "tmax", "c")]
    [InlineData("T max, F", "tmax", "f")]
    [InlineData("max temperature (F)", "tmax", "f")]
    [InlineData("Maximum Temperature C", "tmax", "c")]
    [InlineData("temp_min", "tmin", "")]
    [InlineData("Temperature (C)", "temperature", "c")]
    [InlineData("tmax kelvin", "tmax", "kelvin")]
    [InlineData("DATE", "date", "")]
    [InlineData("date time", "date", "")]
    public void Find_WeatherHeader_IsItsColumnAndUnit(string header, string column, string unit)
    {
        var found = HeaderName.Find(header, Schema.Weather, out var written);

        Assert.Equal((column, unit), (found?.Name, written));
    }

    [Theory]
    [InlineData("planter row", "planter_row")]
    [InlineData("Planter-Row", "planter_row")]
    [InlineData("PLANTS", "plants")]
    [InlineData("rows", "rows")]
    public void Find_HeaderWithoutUnit_IsItsColumn(string header, string column) =>
        Assert.Equal(column, HeaderName.Find(header, Schema.StandCounts, out _)?.Name);

    [Theory]
    [InlineData("plants_ft")]
    [InlineData("strip name")]
    [InlineData("")]
    [InlineData("()")]
    public void Find_OtherHeader_IsNone(string header) => Assert.Null(HeaderName.Find(header, Schema.StandCounts, out _));
}
