using TrialKit.Trials;

namespace TrialKit.Tests.Ingest;

/// <summary>The keys of <c>[forecast]</c> and of <c>[weather]</c> that say what a file leaves open.</summary>
public class ForecastSettingsTests
{
    [Fact]
    public void Read_Forecast_TakesTheNeedAndTheConditions()
    {
        using var folder = With("[forecast]\nneed = \"115 F-days\"\nneed_high = \"80 C-days\"\nresidue = \"80 %\"\ntexture = \"fine\"\ndry_seed_zone = true\nobserved_until = 2026-05-10\nfile = \"ahead.csv\"\n")
            .Write("ahead.csv", "date,tmax_f,tmin_f\n2026-05-11,80,60\n");

        var forecast = folder.Read().Trial!.Forecast;

        Assert.Equal((115.0, 115.0, 144.0), (forecast.Need!.Low.FahrenheitDays, forecast.Need.Mid.FahrenheitDays, forecast.Need.High.FahrenheitDays));
        Assert.Equal((80.0, SoilTexture.Fine, true), (forecast.Conditions.Residue!.Value.Percent, forecast.Conditions.Texture, forecast.Conditions.DrySeedZone));
        Assert.Equal(new DateOnly(2026, 5, 10), forecast.ObservedUntil);
        Assert.Equal(new DateOnly(2026, 5, 11), Assert.Single(forecast.Days!.Days).Date);
    }

    [Theory]
    [InlineData("need out of order", "[forecast]\nneed = \"115 F-days\"\nneed_low = \"120 F-days\"\n", "TK209")]
    [InlineData("need without a unit", "[forecast]\nneed = 115\n", "TK204")]
    [InlineData("low without need", "[forecast]\nneed_low = \"90 F-days\"\n", "TK207")]
    [InlineData("need of nothing", "[forecast]\nneed = \"0 F-days\"\n", "TK209")]
    [InlineData("unknown texture", "[forecast]\ntexture = \"lumpy\"\n", "TK208")]
    [InlineData("file that is not there", "[forecast]\nfile = \"ahead.csv\"\n", "TK507")]
    [InlineData("unknown key", "[forecast]\nnede = \"90 F-days\"\n", "TK202")]
    public void Read_FaultyForecast_IsReportedAtItsPlace(string situation, string section, string code)
    {
        using var folder = With(section);

        var problem = folder.Read().Problems.FirstOrDefault(each => each.Code == code);

        Assert.True(problem is not null, $"{situation}: {string.Join("; ", folder.Problems())}");
        Assert.Equal("trial.toml", problem.Location.File);
    }

    [Theory]
    [InlineData("fill = 4", "TK209")]
    [InlineData("unit = \"K\"", "TK208")]
    [InlineData("heat = \"single sine 50/86\"", "TK208")]
    [InlineData("heat = \"crop heat units\"", "TK208")]
    public void Read_FaultyWeather_IsReported(string line, string code)
    {
        using var folder = TrialFolder.Sound().Replace("trial.toml", "[weather]", "[weather]\n" + line);
        if (line.StartsWith("heat", StringComparison.Ordinal))
        {
            folder.Write("trial.toml", string.Join('\n', TrialFolder.SoundText("trial.toml").Split('\n').Select(each => each.StartsWith("heat", StringComparison.Ordinal) ? line : each)));
        }

        Assert.Contains(code, folder.Read().Problems.Select(problem => problem.Code));
    }

    [Fact]
    public void Read_WeatherUnitAndCurve_AreUsed()
    {
        using var folder = TrialFolder.Sound().Write("trial.toml", string.Join('\n', TrialFolder.SoundText("trial.toml").Split('\n').Select(each =>
                each.StartsWith("heat", StringComparison.Ordinal) ? "heat = \"single sine 86/50 vertical\"\nunit = \"F\"" : each)))
            .Write("weather.csv", string.Join('\n', TrialFolder.SoundText("weather.csv").Split('\n').Select(each => each.Replace("tmax_f", "tmax", StringComparison.Ordinal).Replace("tmin_f", "tmin", StringComparison.Ordinal))));

        var trial = folder.Read().Trial!;

        Assert.Equal(HeatCutOff.Vertical, trial.Heat.Method.CutOff);
        Assert.Equal(TrialFolder.SoundText("weather.csv").Split('\n').Count(line => line.StartsWith("2026", StringComparison.Ordinal)), trial.Weather!.Days.Length);
    }

    /// <summary>The weather file's station and unit prove nothing for another file: each has its own.</summary>
    [Fact]
    public void Read_FilesOfOtherStationsAndUnits_TakeTheirOwn()
    {
        const string Keys = "[forecast]\nfile = \"ahead.csv\"\nunit = \"C\"\nnormals = \"years.csv\"\nnormals_unit = \"0.1 C\"\nnormals_station = \"B\"\n";
        const string Years = "station,date,tmax,tmin\nA,2020-05-01,400,300\nB,2020-05-01,289,217\n";
        using var folder = With(Keys).Write("ahead.csv", "date,tmax,tmin\n2026-05-11,20,10\n").Write("years.csv", Years)
            .Replace("trial.toml", "units = \"us\"\n", string.Empty).Replace("trial.toml", "[weather]", "[units.weather]\ntmax = \"F\"\ntmin = \"F\"\n\n[weather]");

        var reading = folder.Read();

        Assert.True(reading.Trial is not null, string.Join("; ", folder.Problems()));
        Assert.Equal(20, reading.Trial!.Forecast.Days!.Days[0].Maximum.DegreesCelsius, Tolerances.Heat);
        Assert.Equal(28.9, Assert.Single(reading.Trial.Forecast.Normals!.Days).Maximum.DegreesCelsius, Tolerances.Heat);
    }

    [Theory]
    [InlineData("unit = \"C\"\n", "TK123", "'tmax' names no unit")]
    [InlineData("normals_unit = \"0.1 C\"\n", "TK410", "normals_station = \"A\" under [forecast]")]
    public void Read_FurtherFileLeavingSomethingOpen_IsAskedForByItsOwnKey(string keys, string code, string text)
    {
        using var folder = With("[forecast]\nnormals = \"years.csv\"\n" + keys).Write("years.csv", "station,date,tmax,tmin\nA,2020-05-01,400,300\nB,2020-05-01,289,217\n");

        var problem = folder.Read().Errors.First();

        Assert.Equal(code, problem.Code);
        Assert.Contains(text, problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_NormalsOfTheSoil_NeedAFileThatSaysSo()
    {
        using var folder = With("[forecast]\nnormals = \"years.csv\"\nnormals_soil = true\n").Write("years.csv", "date,tmax_c,tmin_c\n2020-05-01,40,30\n");

        Assert.Equal("TK416", Assert.Single(folder.Read().Errors).Code);
    }

    private static TrialFolder With(string section) => TrialFolder.Sound().Replace("trial.toml", "[weather]", section + "\n[weather]");
}
