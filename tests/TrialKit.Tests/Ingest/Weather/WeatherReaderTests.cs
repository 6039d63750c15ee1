using System.Globalization;
using System.Text.Json;
using TrialKit.Heat;
using TrialKit.Ingest;
using TrialKit.Trials;

namespace TrialKit.Tests.Ingest.Weather;

/// <summary>The same Seattle days in every form, and each form damaged; sources in tests/reference-data/weather/SOURCES.md.</summary>
public class WeatherReaderTests
{
    private static readonly DailyTemperature[] Seattle =
        [.. WeatherReader.Read(PathOf("seattle-plain.csv")).Series!.Days];

    public static TheoryData<string> Damaged => [.. Cases().Select(item => item.GetProperty("case").GetString()!)];

    [Theory]
    [InlineData("seattle.dly", null, "GHCN-Daily, a month of one element a line", "XXSEATTLE01")]
    [InlineData("seattle-by-year.csv", null, "GHCN-Daily, a value a line", "XXSEATTLE01")]
    [InlineData("seattle-access.csv", "0.1 C", "station's table, a day a row", "XXSEATTLE01")]
    [InlineData("seattle-power.csv", null, "NASA POWER daily grid", null)]
    [InlineData("seattle-daymet.csv", null, "Daymet daily grid", null)]
    [InlineData("seattle-2012.csv", null, "table of days", null)]
    public void Read_EachForm_GivesTheSameDaysAndSaysTheForm(string file, string? unit, string form, string? station)
    {
        var reading = WeatherReader.Read(PathOf(file), new WeatherOptions { Unit = unit });

        Assert.Empty(reading.Problems);
        Assert.Equal((form, station), (reading.Form, reading.Station));
        Assert.Equal(97, Seattle.Length);
        Assert.Equal(Seattle.Select(Text), reading.Series!.Days.Select(Text));
    }

    /// <summary>An order in whole degrees Fahrenheit has lost what is below half a degree.</summary>
    [Fact]
    public void Read_OrderInWholeFahrenheit_AgreesToItsRounding()
    {
        var reading = WeatherReader.Read(PathOf("seattle-order.csv"), new WeatherOptions { Unit = "F" });

        Assert.Empty(reading.Problems);
        Assert.Equal(Seattle.Select(day => day.Date), reading.Series!.Days.Select(day => day.Date));
        Assert.All(reading.Series.Days.Zip(Seattle), pair => Assert.InRange(pair.First.Maximum.DegreesFahrenheit - pair.Second.Maximum.DegreesFahrenheit, -0.5, 0.5));
    }

    /// <summary>Day 1 is printed as 28.9 and 21.7 C; 27.54 F-days above 10 C is computed from the formula.</summary>
    [Fact]
    public void Read_StationRowOf1949_GivesItsFirstDay()
    {
        var day = WeatherReader.Read(PathOf("ACW00011604.dly")).Series!.Days[0];

        Assert.Equal(new DateOnly(1949, 1, 1), day.Date);
        Assert.Equal(27.54, DegreeDays.Of(day, HeatMethods.Find("simple average 50")!).FahrenheitDays, Tolerances.Heat);
    }

    [Theory]
    [MemberData(nameof(Damaged))]
    public void Read_DamagedFile_SaysWhatIsWrongAndWhere(string name)
    {
        var item = Cases().Single(each => each.GetProperty("case").GetString() == name);
        var form = item.GetProperty("form").GetString()!;
        var lines = File.ReadAllLines(PathOf(form)).ToList();
        var line = item.GetProperty("line").GetInt32();
        lines.RemoveAt(line - 1);
        lines.InsertRange(line - 1, item.GetProperty("text").EnumerateArray().Select(text => text.GetString()!));
        using var folder = TrialFolder.Empty().Write(form, string.Join('\n', lines) + "\n");

        var reading = WeatherReader.Read(Path.Combine(folder.Path, form), new WeatherOptions { Unit = item.GetProperty("unit").GetString(), Station = item.GetProperty("station").GetString() });

        var problem = reading.Problems.FirstOrDefault(each => each.Code == item.GetProperty("code").GetString());
        Assert.True(problem is not null, $"{name}: {string.Join("; ", reading.Problems)}");
        Assert.Equal((form, item.GetProperty("at").GetInt32()), (problem.Location.File, problem.Location.Line));
        Assert.Equal(reading.Problems.Any(each => each.Severity == ProblemSeverity.Error), reading.Series is null);
    }

    [Fact]
    public void Damaged_AreAtLeastForty() => Assert.True(Damaged.Count >= 40, $"{Damaged.Count} cases");

    [Fact]
    public void Read_NotUtf8_SaysWhere()
    {
        using var folder = TrialFolder.Empty().Write("seattle.dly", [.. File.ReadAllBytes(PathOf("seattle.dly")).Take(100), 0xFF]);

        var problem = Assert.Single(WeatherReader.Read(Path.Combine(folder.Path, "seattle.dly")).Problems);

        Assert.Equal(("TK504", 1, 101), (problem.Code, problem.Location.Line, problem.Location.Column));
    }

    [Fact]
    public void Read_SeveralStations_ListsThemAndReadsTheOneChosen()
    {
        var one = File.ReadAllText(PathOf("seattle.dly"));
        using var folder = TrialFolder.Empty().Write("two.dly", one + one.Replace("XXSEATTLE01", "XXSEATTLE02", StringComparison.Ordinal));
        var path = Path.Combine(folder.Path, "two.dly");

        var unchosen = WeatherReader.Read(path);
        var chosen = WeatherReader.Read(path, new WeatherOptions { Station = "xxseattle02" });

        Assert.Contains("'XXSEATTLE01', 'XXSEATTLE02'", Assert.Single(unchosen.Problems).Found, StringComparison.Ordinal);
        Assert.Null(unchosen.Series);
        Assert.Equal("XXSEATTLE02", chosen.Station);
        Assert.Equal(Seattle.Select(Text), chosen.Series!.Days.Select(Text));
    }

    [Fact]
    public void Read_SoilElements_TakesTheDepthOfFiveCentimetres()
    {
        var air = File.ReadAllText(PathOf("ACW00011604.dly"));
        var soil = air.Replace("TMAX", "SX31", StringComparison.Ordinal).Replace("TMIN", "SN31", StringComparison.Ordinal);
        var deep = soil.Replace("SX31", "SX33", StringComparison.Ordinal).Replace("SN31", "SN33", StringComparison.Ordinal).Replace("  289", "  100", StringComparison.Ordinal);
        using var folder = TrialFolder.Empty().Write("soil.dly", deep + soil);
        var path = Path.Combine(folder.Path, "soil.dly");

        Assert.Equal(["1949-01-01 28.9 21.7"], WeatherReader.Read(path, new WeatherOptions { ReadsSoil = true }).Series!.Days.Take(1).Select(Text));
        Assert.Equal("TK414", Assert.Single(WeatherReader.Read(path).Problems).Code);
    }

    [Fact]
    public void Read_GapsToFill_FillsShortOnesAndFlagsThem()
    {
        using var folder = TrialFolder.Empty().Write("gaps.csv", "date,tmax_c,tmin_c\n2012-05-01,10,0\n2012-05-04,16,3\n2012-05-09,20,10\n");
        var path = Path.Combine(folder.Path, "gaps.csv");

        var filled = WeatherReader.Read(path, new WeatherOptions { Fill = 3 });

        Assert.Equal(["2012-05-01 10 0", "2012-05-02 12 1", "2012-05-03 14 2", "2012-05-04 16 3", "2012-05-09 20 10"], filled.Series!.Days.Select(Text));
        Assert.Equal([new DateOnly(2012, 5, 2), new DateOnly(2012, 5, 3)], filled.Series.Filled);
        Assert.Equal(("TK415", ProblemSeverity.Warning), (Assert.Single(filled.Problems).Code, filled.Problems[0].Severity));
        Assert.Equal(3, WeatherReader.Read(path).Series!.Days.Length);
        Assert.Throws<ArgumentException>(() => WeatherReader.Read(path, new WeatherOptions { Fill = 4 }));
        Assert.Throws<ArgumentException>(() => WeatherReader.Read(path, new WeatherOptions { Unit = "K" }));
    }

    [Fact]
    public void Read_Hours_KeepsEachHour()
    {
        var series = WeatherReader.Read(PathOf("hours.csv")).Series!;

        Assert.Equal(["2012-05-01 21.5 10.5", "2012-05-02 21.5 10.5"], series.Days.Select(Text));
        Assert.Equal(24, series.Hours[new DateOnly(2012, 5, 1)].Length);
        Assert.Equal(13.5, series.Hours[new DateOnly(2012, 5, 1)][3].DegreesCelsius, Tolerances.Heat);
    }

    [Theory]
    [InlineData("seattle-by-year.csv", "ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n")]
    [InlineData("seattle-by-year.csv", "\"ID\",\"DATE\",\"ELEMENT\",\"DATA_VALUE\",\"M_FLAG\",\"Q_FLAG\",\"S_FLAG\",\"OBS_TIME\"\n")]
    [InlineData("seattle-by-year.csv", "\n# a remark\n")]
    [InlineData("seattle.dly", "\n")]
    [InlineData("seattle.dly", "   \n# a remark\n")]
    public void Read_StationFileBelowAHeaderOrARemark_IsRecognised(string file, string above)
    {
        using var folder = TrialFolder.Empty().Write(file, above + File.ReadAllText(PathOf(file)));

        var reading = WeatherReader.Read(Path.Combine(folder.Path, file));

        Assert.Empty(reading.Problems);
        Assert.Equal(Seattle.Select(Text), reading.Series!.Days.Select(Text));
    }

    [Theory]
    [InlineData("seattle-plain.csv")]
    [InlineData("seattle-access.csv")]
    [InlineData("seattle-power.csv")]
    [InlineData("seattle-daymet.csv")]
    [InlineData("hours.csv")]
    public void Read_SoilOfAFormWithoutSoilElements_IsAnError(string file)
    {
        var reading = WeatherReader.Read(PathOf(file), new WeatherOptions { ReadsSoil = true, Unit = "C" });

        Assert.Equal("TK416", Assert.Single(reading.Problems).Code);
        Assert.Null(reading.Series);
    }

    [Theory]
    [InlineData("F", true)]
    [InlineData("0.1 C", false)]
    public void Read_PaddedStationTableInAnotherUnit_IsWarnedOf(string unit, bool isWarned)
    {
        using var folder = TrialFolder.Empty().Write("access.csv", "\"STATION\",\"DATE\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"\n\"ACW00011604\",\"1949-01-01\",\"   72\",\",,X\",\"   17\",\",,X\"\n");

        var reading = WeatherReader.Read(Path.Combine(folder.Path, "access.csv"), new WeatherOptions { Unit = unit });

        Assert.Equal(isWarned ? ["TK419"] : [], reading.Problems.Select(problem => problem.Code));
        Assert.NotNull(reading.Series);
    }

    // Clocks were put back on Sunday, 1 November 2026, and forward on Sunday, 8 March.
    [Theory]
    [InlineData("2026-11-01", "01", "TK417", 24, true)]
    [InlineData("2026-11-02", "01", "TK407", 0, false)]
    [InlineData("2026-11-01", "12", "TK407", 0, false)]
    public void Read_HourThatStandsTwice_IsOneHourWhereTheClockCanHaveBeenPutBack(string date, string hour, string code, int hours, bool isRead)
    {
        var rows = Enumerable.Range(0, 24).SelectMany(each => each.ToString("00", CultureInfo.InvariantCulture) == hour ? new[] { Row(each, each), Row(each, each + 1.0) } : [Row(each, each)]);
        using var folder = TrialFolder.Empty().Write("hours.csv", "date,temperature_c\n" + string.Join('\n', rows) + "\n");

        var reading = WeatherReader.Read(Path.Combine(folder.Path, "hours.csv"));

        Assert.Equal(code, Assert.Single(reading.Problems).Code);
        Assert.Equal(isRead, reading.Series is not null);
        Assert.Equal(hours, reading.Series?.Hours[DateOnly.Parse(date, CultureInfo.InvariantCulture)].Length ?? 0);
        if (isRead)
        {
            Assert.Equal(1.5, reading.Series!.Hours[new DateOnly(2026, 11, 1)][1].DegreesCelsius, Tolerances.Heat);
        }

        string Row(int at, double degrees) => FormattableString.Invariant($"{date} {at:00}:00,{degrees}");
    }

    [Theory]
    [InlineData("2026-03-08", 2, "TK418", true)]
    [InlineData("2026-03-09", 2, "TK406", false)]
    [InlineData("2026-03-08", 14, "TK406", false)]
    public void Read_DayOf23Hours_IsWholeWhereTheClockCanHaveBeenPutForward(string date, int missing, string code, bool isWhole)
    {
        // 60 F by night and 90 F by day: 86/50 hourly gives 10 and 36.
        var rows = Enumerable.Range(0, 24).Where(hour => hour != missing).Select(hour => FormattableString.Invariant($"{date} {hour:00}:00,{(hour < 12 ? 60 : 90)}"));
        using var folder = TrialFolder.Empty().Write("hours.csv", "date,temperature_f\n" + string.Join('\n', rows) + "\n");

        var reading = WeatherReader.Read(Path.Combine(folder.Path, "hours.csv"));

        Assert.Equal(code, Assert.Single(reading.Problems).Code);
        Assert.Equal(isWhole ? 1 : 0, reading.Series!.Days.Length);
        if (isWhole)
        {
            var clock = HeatClock.Start(reading.Series, HeatMethods.Find("hourly 86/50")!, DateOnly.Parse(date, CultureInfo.InvariantCulture), countPlantingDay: true);
            Assert.Equal(((11 * 10) + (12 * 36)) / 23.0, clock.Days[0].Heat.FahrenheitDays, Tolerances.Heat);
            Assert.Equal(11 * 10 / 23.0, clock.HeatAt(11 / 23.0)!.Value.FahrenheitDays, Tolerances.Heat);
        }
    }

    [Fact]
    public void Read_HoursOfSeveralStations_ListsThemAndReadsTheOneChosen()
    {
        var rows = new[] { "A", "B" }.SelectMany(station => Enumerable.Range(0, 24).Select(hour => FormattableString.Invariant($"{station},2026-05-01 {hour:00}:00,{(station == "A" ? 10 : 20)}")));
        using var folder = TrialFolder.Empty().Write("hours.csv", "station,date,temperature_c\n" + string.Join('\n', rows) + "\n");
        var path = Path.Combine(folder.Path, "hours.csv");

        Assert.Equal("TK410", Assert.Single(WeatherReader.Read(path).Problems).Code);
        Assert.Equal(["2026-05-01 20 20"], WeatherReader.Read(path, new WeatherOptions { Station = "B" }).Series!.Days.Select(Text));
    }

    [Fact]
    public void Read_NoFile_SaysSo() => Assert.Equal("TK502", Assert.Single(WeatherReader.Read("nowhere.csv").Problems).Code);

    private static string PathOf(string file) => Path.Combine(ReferenceData.Root, "weather", file);

    private static JsonElement.ArrayEnumerator Cases() => ReferenceData.Json("weather/damaged.json").EnumerateArray();

    private static string Text(DailyTemperature day) => FormattableString.Invariant($"{day.Date:yyyy-MM-dd} {Math.Round(day.Maximum.DegreesCelsius, 6)} {Math.Round(day.Minimum.DegreesCelsius, 6)}");
}
