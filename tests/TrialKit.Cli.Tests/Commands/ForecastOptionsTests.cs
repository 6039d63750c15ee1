namespace TrialKit.Cli.Tests.Commands;

/// <summary>Each option of a forecast does what it says, for a trial folder and for a weather file alone, or is refused by name.</summary>
public sealed class ForecastOptionsTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Theory]
    [InlineData("--need", "150", "150 F-days by corn 86/50 (given by --need)")]
    [InlineData("--depth", "3", "105, 135 or 140 F-days")]
    [InlineData("--residue", "80", "Adjusted by +30 to +60 F-days for residue on 80 %")]
    [InlineData("--texture", "fine", "Adjusted by +30 to +60 F-days for fine soil")]
    [InlineData("--dry", null, "Adjusted by +30 F-days for dry seed zone")]
    [InlineData("--skip-planting-day", null, "planting day not counted")]
    [InlineData("--observed-until", "2014-05-10", "not reached by 2014-05-10")]
    [InlineData("--planted", "2014-05-10", "2014-05-10")]
    public void Run_TrialFolderWithAnOption_HonoursIt(string option, string? value, string expected)
    {
        var plain = OneLine(Cli.Run("forecast", Repository.Example("drag-chains")).Out);
        var (exit, printed, error) = Cli.Run(["forecast", Repository.Example("drag-chains"), option, .. value is null ? Array.Empty<string>() : [value]]);

        Assert.True(exit == ExitCode.Done, error);
        Assert.Contains(expected, OneLine(printed), StringComparison.Ordinal);
        Assert.DoesNotContain(expected, plain, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_TrialFolderWithForecastAndNormals_TakesThemAfterTheRecord()
    {
        File.WriteAllText(scratch.In("week.csv"), "date,tmax,tmin\n2014-05-11,72,50\n2014-05-12,72,50\n");
        File.WriteAllText(scratch.In("years.csv"), Years());

        var (exit, printed, error) = Cli.Run(
            "forecast", Repository.Example("drag-chains"), "--observed-until", "2014-05-10", "--forecast", scratch.In("week.csv"), "--forecast-unit", "F",
            "--normals", scratch.In("years.csv"), "--normals-unit", "C", "--normals-station", "B");

        Assert.True(exit == ExitCode.Done, error);
        Assert.Contains("Normal days: the mean heat of the same day in 2 years of years.csv.", OneLine(printed), StringComparison.Ordinal);
        Assert.Contains("2 forecast,", OneLine(printed), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_TrialFolderWithFill_BridgesTheHoleBeforeTheForecast()
    {
        File.WriteAllText(scratch.In("week.csv"), "date,tmax_f,tmin_f\n" + string.Concat(Enumerable.Range(13, 15).Select(day => FormattableString.Invariant($"2014-05-{day},80,60\n"))));
        string[] args = ["forecast", Repository.Example("drag-chains"), "--observed-until", "2014-05-10", "--forecast", scratch.In("week.csv")];

        Assert.Contains("2014-05-11 is covered by no record, forecast or normal", OneLine(Cli.Run(args).Out), StringComparison.Ordinal);
        Assert.Contains("2 filled,", OneLine(Cli.Run([.. args, "--fill", "3"]).Out), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--station", "X")]
    [InlineData("--unit", "F")]
    [InlineData("--soil", null)]
    [InlineData("--weather", "x.csv")]
    [InlineData("--crop", "corn")]
    [InlineData("--forecast-unit", "F")]
    [InlineData("--normals-station", "X")]
    [InlineData("--normals-soil", null)]
    [InlineData("--residue", "900")]
    [InlineData("--depth", "1e9")]
    [InlineData("--planted", "9999-12-31")]
    [InlineData("--fill", "4")]
    public void Run_TrialFolderWithAnOptionThatCannotBe_IsRefusedByName(string option, string? value)
    {
        var (exit, _, error) = Cli.Run(["forecast", Repository.Example("drag-chains"), option, .. value is null ? Array.Empty<string>() : [value]]);

        Assert.Equal(ExitCode.Usage, exit);
        Assert.True(error.Contains(option, StringComparison.Ordinal) || option is "--weather" or "--crop", error);
    }

    [Fact]
    public void Run_TrialWithAForecastSection_UsesItInEveryCommand()
    {
        var trial = scratch.Copy(Repository.Example("drag-chains"));
        File.WriteAllText(Path.Combine(trial, "years.csv"), Years());
        File.AppendAllText(Path.Combine(trial, "trial.toml"), "\n[forecast]\nobserved_until = 2014-05-10\nnormals = \"years.csv\"\nnormals_unit = \"C\"\nnormals_station = \"B\"\nneed = \"110 F-days\"\ndry_seed_zone = true\n");

        var (exit, printed, error) = Cli.Run("forecast", trial);
        Cli.Run("analyze", trial, "--output", scratch.In("results"));
        var findings = File.ReadAllText(scratch.In(Path.Combine("results", "findings.csv")));
        var strips = File.ReadAllLines(scratch.In(Path.Combine("results", "strip-forecasts.csv"))).Select(line => line.Split(',')).ToArray();

        Assert.True(exit == ExitCode.Done, error);
        Assert.Contains("110 F-days by corn 86/50 (trial.toml)", OneLine(printed), StringComparison.Ordinal);
        Assert.Contains("Not adjusted for dry seed zone: the heat needed was given.", OneLine(printed), StringComparison.Ordinal);
        Assert.Contains("resting on 3 observed, ", findings, StringComparison.Ordinal);
        Assert.Equal("3", strips[1][Array.IndexOf(strips[0], "high_observed_days")]);
    }

    [Fact]
    public void Run_Analyze_NamesTheHeatMethod() =>
        Assert.Contains("Heat By soybean 86/50 from temperatures at seed depth in soil-temperature.csv; planting day counted.", OneLine(Cli.Run("analyze", Repository.Example("closing-wheels")).Out), StringComparison.Ordinal);

    [Fact]
    public void Run_FilledDays_AreCountedUnderEachDateAndInTheTable()
    {
        File.WriteAllText(scratch.In("gap.csv"), "date,tmax_f,tmin_f\n2026-05-01,80,60\n2026-05-04,80,60\n2026-05-05,80,60\n2026-05-06,80,60\n2026-05-07,80,60\n");

        var (_, printed, _) = Cli.Run("forecast", "--weather", scratch.In("gap.csv"), "--crop", "corn", "--planted", "2026-05-01", "--fill", "3", "--csv", scratch.In("f.csv"), "--figure", scratch.In("f.pdf"));
        var table = File.ReadAllLines(scratch.In("f.csv")).Select(line => line.Split(',')).ToArray();

        Assert.Contains("2026-05-05 observed", printed, StringComparison.Ordinal);
        Assert.Contains("2 filled", printed, StringComparison.Ordinal);
        Assert.Equal(["3", "2", "0", "0"], new[] { "observed", "filled", "forecast", "normal" }.Select(kind => table[1][Array.IndexOf(table[0], $"low_{kind}_days")]));
        Assert.Equal("2", table[1][Array.IndexOf(table[0], "high_filled_days")]);
    }

    [Fact]
    public void Run_ConditionsWithoutAnAdjustment_AreSaidToChangeNothing()
    {
        var weather = Path.Combine(Repository.Root, "tests", "reference-data", "weather", "seattle-plain.csv");

        var (_, printed, _) = Cli.Run("forecast", "--weather", weather, "--crop", "soybean", "--planted", "2012-05-01", "--residue", "80", "--depth", "3");

        Assert.Contains("Not adjusted for planted 3 in deep; residue on 80 % of the ground", OneLine(printed), StringComparison.Ordinal);
        Assert.Contains("common practice, no source at hand", OneLine(printed), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SoilOfAPlainTable_IsAnError()
    {
        var weather = Path.Combine(Repository.Root, "tests", "reference-data", "weather", "seattle-plain.csv");

        Assert.Equal(ExitCode.DataErrors, Cli.Run("forecast", "--weather", weather, "--crop", "corn", "--planted", "2012-05-01", "--soil").Exit);
        Assert.Equal(ExitCode.DataErrors, Cli.Run("heat", weather, "--soil").Exit);
    }

    [Fact]
    public void Run_WindowWithoutDays_SaysSoOnceAndNamesNoDayBeforePlanting()
    {
        var weather = Path.Combine(Repository.Root, "tests", "reference-data", "weather", "seattle-plain.csv");

        var printed = OneLine(Cli.Run("forecast", "--weather", weather, "--crop", "corn", "--from", "2012-06-01", "--to", "2012-06-30").Out);

        Assert.Contains("Planted 2012-06-01 to 2012-06-30 (30 dates): no temperatures on hand from planting on; those on hand are of 2012-02-25 to 2012-05-31.", printed, StringComparison.Ordinal);
        Assert.DoesNotContain("not reached by", printed, StringComparison.Ordinal);
    }

    // DD60 of five days: 2.008 F-days each come to 10.04, above the class that ends at 10.
    [Fact]
    public void Run_CottonSumJustAboveALimit_IsPrintedWithTheDigitsThatDecide()
    {
        File.WriteAllText(scratch.In("cotton.csv"), "date,tmax_f,tmin_f\n" + string.Concat(Enumerable.Range(1, 20).Select(day => FormattableString.Invariant($"2026-05-{day:00},72.016,52\n"))));

        var printed = OneLine(Cli.Run("forecast", "--weather", scratch.In("cotton.csv"), "--crop", "cotton", "--planted", "2026-05-01").Out);

        Assert.Contains("marginal (10.04", printed, StringComparison.Ordinal);
    }

    private static string Years() => "station,date,tmax,tmin\n"
        + string.Concat(from station in new[] { "A", "B" } from year in new[] { 2012, 2013 } from day in Enumerable.Range(1, 30) select FormattableString.Invariant($"{station},{year}-05-{day:00},{(station == "A" ? 5 : 22)},{(station == "A" ? 1 : 12)}\n"));

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
