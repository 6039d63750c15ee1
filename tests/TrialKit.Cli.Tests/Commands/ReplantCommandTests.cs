namespace TrialKit.Cli.Tests.Commands;

public class ReplantCommandTests
{
    [Fact]
    public void Run_PrintedExample_PrintsBothSidesTheSourceAndTheCaution()
    {
        var (exit, printed, _) = Cli.Run("replant", "--stand", "20000 plants/ac", "--planted", "2026-04-25", "--replant", "2026-05-25");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Matches(@"keep: stand left +20,000 +Apr 25 +92", printed);
        Assert.Matches(@"replant +30,000 +May 25 +87 +−5", printed);
        Assert.Contains("5 points ahead of replanting", printed, StringComparison.Ordinal);
        Assert.Contains("Nafziger 1994", printed, StringComparison.Ordinal);
        Assert.Contains("one region's data", printed, StringComparison.Ordinal);
        Assert.All(printed.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Run_Trial_TakesStandAndDateFromIt()
    {
        var (exit, printed, _) = Cli.Run("replant", Repository.Example("drag-chains"), "--replant", "2014-05-28");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("keep: No chains", printed, StringComparison.Ordinal);
        Assert.Contains("keep: Drag chains", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_DateOutsideTheTable_SaysSoAndGivesNoNumber()
    {
        var (exit, printed, _) = Cli.Run("replant", "--stand", "49000 plants/ha", "--planted", "2026-04-25", "--replant", "2026-06-20");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("outside the table", printed, StringComparison.Ordinal);
        Assert.Contains("49,000", printed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no unit", "20000", "2026-04-25", "2026-05-25")]
    [InlineData("negative", "-20000 plants/ac", "2026-04-25", "2026-05-25")]
    [InlineData("no date", "20000 plants/ac", "April", "2026-05-25")]
    [InlineData("before planting", "20000 plants/ac", "2026-04-25", "2026-04-20")]
    [InlineData("another season", "20000 plants/ac", "2025-04-25", "2026-05-25")]
    public void Run_ImpossibleInput_ExitsWithUsage(string situation, string stand, string planted, string replant)
    {
        var (exit, printed, error) = Cli.Run("replant", "--stand", stand, "--planted", planted, "--replant", replant);

        Assert.True(exit == ExitCode.Usage, $"{situation}: exit {exit}, {error}");
        Assert.Empty(printed);
    }

    [Fact]
    public void Run_FolderAndStand_ExitsWithUsage() =>
        Assert.Equal(ExitCode.Usage, Cli.Run("replant", Repository.Example("drag-chains"), "--stand", "20000 plants/ac", "--replant", "2014-05-28").Exit);
}
