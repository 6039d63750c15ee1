namespace TrialKit.Cli.Tests.Commands;

public class HeatCommandTests
{
    private static string Weather(string file) => Path.Combine(Repository.Root, "tests", "reference-data", "weather", file);

    // Totals computed from the record.
    [Fact]
    public void Run_SideBySide_PrintsTheTotalsOfMay()
    {
        var (exit, printed, error) = Cli.Run("heat", Weather("seattle-plain.csv"), "--from", "2012-05-01", "--to", "2012-05-31", "--side-by-side");

        Assert.Equal((ExitCode.Done, ""), (exit, error));
        Assert.All(["222.30", "172.35", "196.38", "187.94", "401.94"], total => Assert.Contains(total, printed, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("one method", new string[0], "a.svg")]
    [InlineData("several", new[] { "--side-by-side" }, "b.png")]
    [InlineData("one, as a page", new[] { "--method", "double sine 86/50 vertical" }, "c.pdf")]
    [InlineData("one that may fall below zero", new[] { "--method", "crop heat units unfloored" }, "d.svg")]
    public void Run_WithFiles_WritesEachDayAndTheFigure(string situation, string[] args, string figure)
    {
        using var scratch = new Scratch();

        var (exit, printed, error) = Cli.Run(["heat", Weather("seattle-plain.csv"), "--csv", scratch.In("heat.csv"), "--figure", scratch.In(figure), "--quiet", .. args]);

        Assert.True(exit == ExitCode.Done, $"{situation}: {error}");
        Assert.Empty(printed);
        Assert.Equal(0, (File.ReadAllLines(scratch.In("heat.csv")).Length - 1) % 97);
        Assert.True(new FileInfo(scratch.In(figure)).Length > 1000, situation);
    }

    [Fact]
    public void Run_DayMissing_SaysAtLeastAndIncomplete()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch.In("gap.csv"), "date,tmax_f,tmin_f\n2026-05-01,80,60\n2026-05-03,80,60\n");

        var (_, printed, _) = Cli.Run("heat", scratch.In("gap.csv"));
        var (_, filled, warning) = Cli.Run("heat", scratch.In("gap.csv"), "--fill", "1");

        Assert.Contains("at least 40.00, incomplete", printed, StringComparison.Ordinal);
        Assert.Contains("missing", printed, StringComparison.Ordinal);
        Assert.Contains("filled", filled, StringComparison.Ordinal);
        Assert.Contains("60.00", filled, StringComparison.Ordinal);
        Assert.Contains("TK415", warning, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_NoUnit_ExitsWithDataErrorsAndSaysHowToGiveIt()
    {
        var (exit, printed, error) = Cli.Run("heat", Weather("seattle-order.csv"));

        Assert.Equal((ExitCode.DataErrors, ""), (exit, printed));
        Assert.Contains("--unit F", error, StringComparison.Ordinal);
        Assert.Contains("--unit \"0.1 C\"", error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, Cli.Run("heat", Weather("seattle-order.csv"), "--unit", "F").Exit);
    }

    [Fact]
    public void Run_FilledDaysSideBySide_CountsThemBesideEachSum()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch.In("gap.csv"), "date,tmax_f,tmin_f\n2026-05-01,80,60\n2026-05-03,80,60\n2026-05-04,80,60\n");

        var (_, printed, _) = Cli.Run("heat", scratch.In("gap.csv"), "--fill", "1", "--side-by-side", "--figure", scratch.In("gap.svg"));

        Assert.Contains("1 of them filled by interpolation", string.Join(' ', printed.Split('\n')), StringComparison.Ordinal);
        Assert.Contains("1 of 4 days filled", File.ReadAllText(scratch.In("gap.svg")), StringComparison.Ordinal);
        Assert.Matches("corn 86/50 +80[.]00 +F-days +0 +1", printed);
    }

    [Theory]
    [InlineData("us", "F-days", "9")]
    [InlineData("metric", "C-days", "5")]
    public void Run_WithUnits_WritesTheTableInThem(string units, string unit, string heat)
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch.In("day.csv"), "date,tmax_f,tmin_f\n2026-05-01,68,50\n2026-05-02,68,50\n");

        Cli.Run("heat", scratch.In("day.csv"), "--units", units, "--csv", scratch.In("heat.csv"), "--quiet");

        Assert.StartsWith($"corn 86/50,2026-05-01,{unit},{heat},{heat},", File.ReadAllLines(scratch.In("heat.csv"))[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Run_StationsOfAFile_AreChosenByTheirOption()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch.In("two.csv"), "station,date,tmax_f,tmin_f\nA,2026-05-01,80,60\nB,2026-05-01,80,60\n");

        Assert.Contains("--station ID", Cli.Run("heat", scratch.In("two.csv")).Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, Cli.Run("heat", scratch.In("two.csv"), "--station", "B").Exit);
    }

    [Theory]
    [InlineData("no file", new[] { "nowhere.csv" })]
    [InlineData("unknown method", new[] { "SEATTLE", "--method", "corn 50/86" })]
    [InlineData("days backwards", new[] { "SEATTLE", "--from", "2012-05-02", "--to", "2012-05-01" })]
    [InlineData("days at the end of time", new[] { "SEATTLE", "--from", "9999-12-30", "--to", "9999-12-31" })]
    [InlineData("output over the input", new[] { "SEATTLE", "--csv", "SEATTLE" })]
    public void Run_WrongOptions_ExitWithUsage(string situation, string[] args)
    {
        var (exit, _, error) = Cli.Run(["heat", .. args.Select(arg => arg == "SEATTLE" ? Weather("seattle-plain.csv") : arg)]);

        Assert.True(exit == ExitCode.Usage, $"{situation}: exit {exit}, {error}");
    }
}
