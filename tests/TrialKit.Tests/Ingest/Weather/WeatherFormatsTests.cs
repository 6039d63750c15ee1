using System.Globalization;
using TrialKit.Trials;

namespace TrialKit.Tests.Ingest.Weather;

/// <summary>Weather as its services hand it out. The station rows are those of ACW00011604 in January 1949 (NOAA, GHCN-Daily).</summary>
public class WeatherFormatsTests
{
    private const string MaximumRow = "ACW00011604194901TMAX  289  X  289  X  283  X  283  X  289  X  289  X  278  X  267  X  272  X  278  X  267  X  278  X  267  X  267  X  278  X  267  X  267  X  272  X  272  X  272  X  278  X  272  X  267  X  267  X  267  X  278  X  272  X  272  X  272  X  272  X  272  X";
    private const string MinimumRow = "ACW00011604194901TMIN  217  X  228  X  222  X  233  X  222  X";
    private const string OtherRow = "ACW00011604194901PRCP    0  X    5  X";

    private static TrialFolder With(string weather, string planted = "1949-01-02") =>
        TrialFolder.Empty()
            .Write("trial.toml", TrialFolder.SoundText("trial.toml").Replace("2026-04-27", planted, StringComparison.Ordinal))
            .Write("strips.csv", "strip,block,treatment\nA1,1,none\nA2,1,chains\n")
            .Write("stand-counts.csv", "strip,length_ft,plants\nA1,17.424,30\nA2,17.424,31\n")
            .Write("weather.csv", weather);

    private static string[] Days(TrialFolder folder)
    {
        var reading = folder.Read();
        Assert.True(reading.Trial is not null, string.Join("; ", reading.Problems));
        return [.. reading.Trial!.Weather!.Days.Select(Text)];
    }

    private static string Text(DailyTemperature day) => string.Create(
        CultureInfo.InvariantCulture, $"{day.Date:yyyy-MM-dd} {Math.Round(day.Maximum.DegreesCelsius, 6)} {Math.Round(day.Minimum.DegreesCelsius, 6)}");

    [Fact]
    public void Read_StationMonths_GivesTheDaysThatHaveBothExtremes()
    {
        using var folder = With(string.Join('\n', OtherRow, MaximumRow, MinimumRow));

        Assert.Equal(
            ["1949-01-01 28.9 21.7", "1949-01-02 28.9 22.8", "1949-01-03 28.3 22.2", "1949-01-04 28.3 23.3", "1949-01-05 28.9 22.2"],
            Days(folder));
    }

    [Fact]
    public void Read_StationMonthsWithMissingAndFailedValues_LeavesTheirDaysOutAndSaysSo()
    {
        using var folder = With(MaximumRow + "\n" + MinimumRow.Replace("  228  X", "-9999   ", StringComparison.Ordinal).Replace("  233  X", "  233 IX", StringComparison.Ordinal) + "\n");

        var reading = folder.Read();

        Assert.Equal(["1949-01-01 28.9 21.7", "1949-01-03 28.3 22.2", "1949-01-05 28.9 22.2"], reading.Trial!.Weather!.Days.Select(Text));
        Assert.Equal(
            [
                "weather.csv:1:30: warning TK420: 27 days have a maximum or a minimum alone and count as missing, the first 1949-01-02; both of each day were expected",
                "weather.csv:2:46: warning TK409: 'TMIN' of 1949-01-04 failed the station's quality check 'I', so the day counts as missing; a value that passed was expected",
            ],
            reading.Problems.Select(problem => problem.ToString()));
    }

    [Fact]
    public void Read_StationMonthsOfManyYears_KeepsTheTrialsSeason()
    {
        var other = (MaximumRow + "\n" + MinimumRow).Replace("ACW00011604194901", "ACW00011604197001", StringComparison.Ordinal);
        using var folder = With(MaximumRow + "\n" + MinimumRow + "\n" + other + "\n");

        Assert.Equal(5, Days(folder).Length);
    }

    [Fact]
    public void Read_StationMonthsOfTwoStations_IsAnError()
    {
        using var folder = With(MaximumRow + "\n" + MinimumRow.Replace("ACW00011604", "ACW00011647", StringComparison.Ordinal) + "\n");

        Assert.Equal(
            ["weather.csv:2:1: error TK410: a second station begins here; the file holds 'ACW00011604', 'ACW00011647'; one of them was expected to be chosen, such as station = \"ACW00011604\" under [weather]"],
            folder.Problems());
    }

    [Fact]
    public void Read_StationMonthsWithABrokenLine_IsAnError()
    {
        using var folder = With(MaximumRow + "\n" + MinimumRow.Replace("  217  X", "  2x7  X", StringComparison.Ordinal) + "\nACW00011604 1949\n");

        Assert.Equal(["weather.csv:2:22", "weather.csv:3:1"], folder.Read().Problems.Where(problem => problem.Code == "TK411").Select(problem => problem.Location.ToString()));
    }

    [Fact]
    public void Read_StationValues_GivesTheDaysThatHaveBothExtremes()
    {
        using var folder = With("""
            ACW00011604,19490101,TMAX,289,,,X,
            ACW00011604,19490101,TMIN,217,,,X,
            ACW00011604,19490101,PRCP,0,,,X,
            ACW00011604,19490102,TMAX,289,,,X,0700
            ACW00011604,19490102,TMIN,228,,G,X,0700
            """);

        var reading = folder.Read();

        Assert.Equal(["1949-01-01 28.9 21.7"], reading.Trial!.Weather!.Days.Select(Text));
        Assert.Equal("TK409", Assert.Single(reading.Problems).Code);
    }

    [Fact]
    public void Read_StationTable_TakesTheUnitFromTheSettingsAndHeedsItsFlags()
    {
        using var folder = With("""
            "STATION","DATE","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"
            "ACW00011604","1949-01-01","    0",",,X","  289",",,X","  217",",,X"
            "ACW00011604","1949-01-02","    5",",,X","  289",",I,X","  228",",,X"
            """)
            .Replace("trial.toml", "units = \"us\"\n", string.Empty)
            .Replace("trial.toml", "[site]", "[units.weather]\ntmax = \"0.1 C\"\ntmin = \"0.1 C\"\n\n[site]");

        var reading = folder.Read();

        Assert.Equal(["1949-01-01 28.9 21.7"], reading.Trial!.Weather!.Days.Select(Text));
        Assert.Equal(
            ["weather.csv:3:42: warning TK409: 'TMAX' of 1949-01-02 failed the station's quality check 'I', so the day counts as missing; a value that passed was expected"],
            reading.Problems.Select(problem => problem.ToString()));
    }

    [Fact]
    public void Read_StationTableWithoutAUnit_AsksForIt()
    {
        using var folder = With("STATION,NAME,DATE,TMAX,TMIN\nX,Y,1949-01-01,84,71\n");

        Assert.Equal(["TK123", "TK123"], folder.Read().Problems.Select(problem => problem.Code));
    }

    [Fact]
    public void Read_PowerGrid_IsReadBelowItsHeading()
    {
        using var folder = With("""
            -BEGIN HEADER-
            NASA/POWER Source Native Resolution Daily Data, latitude 41.5
            The value for missing source data is: -999
            -END HEADER-
            YEAR,MO,DY,T2M_MAX,T2M_MIN
            2026,4,27,20.5,8.25
            2026,4,28,-999,8
            2026,4,29,22,9
            """, "2026-04-27");

        var reading = folder.Read();

        Assert.Equal(["2026-04-27 20.5 8.25", "2026-04-29 22 9"], reading.Trial!.Weather!.Days.Select(Text));
        Assert.Equal(
            ["weather.csv:7:11: warning TK405: column 'T2M_MAX' is not recorded, so 2026-04-28 counts as missing; a temperature was expected"],
            reading.Problems.Select(problem => problem.ToString()));
    }

    [Fact]
    public void Read_PowerGridByDayOfYear_CountsFromJanuary()
    {
        using var folder = With("-BEGIN HEADER-\n-END HEADER-\nYEAR,DOY,T2M_MAX,T2M_MIN\n2028,60,20,8\n2028,366,5,-2\n", "2028-02-27");

        Assert.Equal(["2028-02-29 20 8", "2028-12-31 5 -2"], Days(folder));
    }

    /// <summary>Daymet keeps February 29 and drops December 31 of a leap year.</summary>
    [Fact]
    public void Read_DaymetGrid_IsReadBelowItsHeading()
    {
        using var folder = With("""
            Latitude: 41.5  Longitude: -93.2
            How to cite: see the site
            year,yday,prcp (mm/day),tmax (deg c),tmin (deg c)
            2028,59,0.0,9.5,-1.2
            2028,60,0.0,10.5,0.1
            2028,61,1.5,11,1
            """, "2028-02-27");

        var reading = folder.Read();

        Assert.Equal(["2028-02-28 9.5 -1.2", "2028-02-29 10.5 0.1", "2028-03-01 11 1"], reading.Trial!.Weather!.Days.Select(Text));
        Assert.Empty(reading.Problems);
    }

    [Fact]
    public void Read_GridRowOfNoDay_IsAnError()
    {
        using var folder = With("year,yday,tmax (deg c),tmin (deg c)\n2027,366,9.5,-1.2\n", "2027-02-27");

        Assert.Equal(["weather.csv:2:1: error TK412: '2027 366' is no day of a year; a year with a month and day, or a year with a day from 1 to 366, was expected"], folder.Problems());
    }

    [Theory]
    [InlineData("289", "989")]
    [InlineData("289", "100")]
    public void Read_StationValuesThatCannotBe_AreErrors(string old, string maximum)
    {
        using var folder = With("ACW00011604,19490101,TMAX,289,,,X,\nACW00011604,19490101,TMIN,217,,,X,\n".Replace(old, maximum, StringComparison.Ordinal));

        Assert.Contains(Assert.Single(folder.Read().Errors).Code, new[] { "TK401", "TK402" });
    }
}
