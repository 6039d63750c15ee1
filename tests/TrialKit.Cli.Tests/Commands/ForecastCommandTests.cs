namespace TrialKit.Cli.Tests.Commands;

public class ForecastCommandTests
{
    private static string Seattle => Path.Combine(Repository.Root, "tests", "reference-data", "weather", "seattle-plain.csv");

    // Dates computed from the record.
    [Fact]
    public void Run_WeatherAndCrop_PrintsTheDatesAndWhatTheyRestOn()
    {
        var (exit, printed, error) = Cli.Run("forecast", "--weather", Seattle, "--crop", "corn", "--planted", "2012-05-01");

        Assert.Equal((ExitCode.Done, ""), (exit, error));
        Assert.Contains("90, 120 or 125 F-days by corn 86/50", printed, StringComparison.Ordinal);
        Assert.Contains("2012-05-14 observed  2012-05-17 observed  2012-05-18 observed", printed, StringComparison.Ordinal);
        Assert.Contains("planting day counted", printed, StringComparison.Ordinal);
        Assert.Contains("table of days", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_NeedBeyondTheRecord_SaysNotReached()
    {
        var (exit, printed, _) = Cli.Run("forecast", "--weather", Seattle, "--crop", "corn", "--planted", "2012-05-20", "--need", "500");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("not reached by 2012-05-31", printed.ReplaceLineEndings(" ").Replace("   ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("svg", "<?xml")]
    [InlineData("pdf", "%PDF")]
    [InlineData("png", "\u0089PNG")]
    public void Run_WindowWithNormals_WritesTheTableAndTheFigure(string form, string begins)
    {
        using var scratch = new Scratch();
        var (csv, figure) = (scratch.In("window.csv"), scratch.In("window." + form));

        var (exit, _, error) = Cli.Run("forecast", "--weather", Seattle, "--crop", "corn", "--from", "2012-05-01", "--to", "2012-05-20", "--observed-until", "2012-05-10", "--normals", Seattle, "--depth", "3", "--residue", "80", "--csv", csv, "--figure", figure, "--quiet");

        Assert.Equal((ExitCode.Done, ""), (exit, error));
        Assert.Equal(21, File.ReadAllLines(csv).Length);
        Assert.StartsWith("2012-05-01,170,185,200,corn 86/50,true,2012-05-25,", File.ReadAllLines(csv)[1], StringComparison.Ordinal);
        Assert.Contains(",normal,", File.ReadAllLines(csv)[1], StringComparison.Ordinal);
        Assert.Equal(begins, System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(figure)[..begins.Length]));
    }

    [Fact]
    public void Run_Cotton_PrintsTheConditions()
    {
        var (_, printed, _) = Cli.Run("forecast", "--weather", Seattle, "--crop", "cotton", "--from", "2012-05-01", "--to", "2012-05-02");

        Assert.Contains("very poor (0", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_TrialFolder_UsesItsOwnSettings()
    {
        var (exit, printed, _) = Cli.Run("forecast", Repository.Example("drag-chains"));

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("2014-05-16 observed", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_TrialFolder_KeepsItsInputs()
    {
        using var scratch = new Scratch();
        var trial = scratch.Copy(Repository.Example("drag-chains"));

        Assert.Equal(ExitCode.Usage, Cli.Run("forecast", trial, "--csv", Path.Combine(trial, "weather.csv")).Exit);
    }

    [Theory]
    [InlineData("no planting date", new[] { "--crop", "corn" })]
    [InlineData("half a window", new[] { "--crop", "corn", "--from", "2012-05-01" })]
    [InlineData("a window backwards", new[] { "--crop", "corn", "--from", "2012-05-02", "--to", "2012-05-01" })]
    [InlineData("a date that is none", new[] { "--crop", "corn", "--planted", "May 1" })]
    [InlineData("no crop", new[] { "--planted", "2012-05-01" })]
    [InlineData("unknown crop", new[] { "--crop", "kelp", "--planted", "2012-05-01" })]
    [InlineData("no need known", new[] { "--crop", "canola", "--planted", "2012-05-01" })]
    [InlineData("a need below zero", new[] { "--crop", "canola", "--planted", "2012-05-01", "--need", "-5" })]
    [InlineData("an unknown picture", new[] { "--crop", "corn", "--planted", "2012-05-01", "--figure", "x.bmp" })]
    [InlineData("a gap too long to fill", new[] { "--crop", "corn", "--planted", "2012-05-01", "--fill", "9" })]
    public void Run_WrongOptions_ExitWithUsage(string situation, string[] args)
    {
        var (exit, _, error) = Cli.Run(["forecast", "--weather", Seattle, .. args]);

        Assert.True(exit == ExitCode.Usage, $"{situation}: exit {exit}, {error}");
        Assert.StartsWith("trialkit: ", error, StringComparison.Ordinal);
    }
}
