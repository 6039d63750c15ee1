namespace TrialKit.Cli.Tests.Commands;

/// <summary>Sheets, keys and trial folders from the command line, and the working of a real trial.</summary>
public class TeachCommandTests
{
    [Fact]
    public void Run_WithoutATopic_ListsThem()
    {
        var (exit, printed, error) = Cli.Run("teach");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Empty(error);
        Assert.All(new[] { "stand-counts", "paired-t", "coins", "block-anova", "first:", "second:" }, word => Assert.Contains(word, printed, StringComparison.Ordinal));
    }

    [Fact]
    public void Run_ATopic_WritesSheetsAndATrialThatTheOtherCommandsTake()
    {
        using var scratch = new Scratch();
        var folder = scratch.In("sheets");

        var (exit, printed, error) = Cli.Run("teach", "paired-t", "--seed", "7", "--level", "second", "--output", folder);

        Assert.True(exit == ExitCode.Done, error);
        Assert.Contains("student.pdf", printed, StringComparison.Ordinal);
        Assert.Equal(["key.html", "key.pdf", "student.html", "student.pdf"], Directory.EnumerateFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(ExitCode.Done, Cli.Run("check", Path.Combine(folder, "trial")).Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("analyze", Path.Combine(folder, "trial")).Exit);
        Assert.Contains("1.895", File.ReadAllText(Path.Combine(folder, "student.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_TheSameSeedTwice_WritesTheSameBytes()
    {
        using var scratch = new Scratch();
        foreach (var name in new[] { "a", "b" })
        {
            Assert.Equal(ExitCode.Done, Cli.Run("teach", "coins", "--seed", "3", "--output", scratch.In(name), "--quiet").Exit);
        }

        foreach (var file in Directory.EnumerateFiles(scratch.In("a"), "*", SearchOption.AllDirectories))
        {
            Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(Path.Combine(scratch.In("b"), Path.GetRelativePath(scratch.In("a"), file))));
        }
    }

    [Fact]
    public void Run_WrongArguments_SayWhatWasExpected()
    {
        using var scratch = new Scratch();
        var (exit, _, error) = Cli.Run("teach", "astrology", "--output", scratch.In("a"));
        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains("paired-t", error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Usage, Cli.Run("teach", "coins", "--level", "third").Exit);
        Assert.Equal(ExitCode.Usage, Cli.Run("teach", "coins", "--seed", "-1").Exit);
        Assert.Equal(ExitCode.Usage, Cli.Run("teach", "--measure", "stand").Exit);
        Assert.Equal(ExitCode.Usage, Cli.Run("teach", "coins", "--explain", Repository.Example("drag-chains")).Exit);
        Assert.Equal(ExitCode.Usage, Cli.Run("teach", "--explain", Repository.Example("drag-chains"), "--output", scratch.In("a.doc")).Exit);
        Assert.Equal(ExitCode.Usage, Cli.Run("teach", "--explain", Repository.Example("drag-chains"), "--measure", "luck").Exit);
    }

    [Fact]
    public void Run_OverATrialThatIsNotTheSheets_Refuses()
    {
        using var scratch = new Scratch();
        var folder = scratch.In("sheets");
        Assert.Equal(ExitCode.Done, Cli.Run("teach", "coins", "--seed", "3", "--output", folder).Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("teach", "coins", "--seed", "3", "--output", folder).Exit);

        var (exit, _, error) = Cli.Run("teach", "coins", "--seed", "4", "--output", folder);

        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains("already", error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Usage, Cli.Run("teach", "coins", "--output", scratch.Copy(Repository.Example("drag-chains"))).Exit);
    }

    [Theory]
    [InlineData("drag-chains")]
    [InlineData("closing-wheels")]
    public void Run_Explain_PrintsTheWorkingOfARealTrial(string example)
    {
        var (exit, printed, error) = Cli.Run("teach", "--explain", Repository.Example(example), "--measure", "stand");

        Assert.Equal(ExitCode.Done, exit);
        Assert.DoesNotContain("defect", error, StringComparison.Ordinal);
        Assert.Contains("Worked step by step: Stand", printed, StringComparison.Ordinal);
        var analysis = Cli.Run("analyze", Repository.Example(example)).Out.Split('\n').First(line => line.StartsWith("Stand, plants/", StringComparison.Ordinal));
        var figures = analysis.Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Skip(1).Take(3).ToArray();
        Assert.All(figures, figure => Assert.Contains(figure, printed, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("worked.pdf")]
    [InlineData("worked.html")]
    [InlineData("worked.txt")]
    public void Run_ExplainWithOutput_WritesTheFile(string file)
    {
        using var scratch = new Scratch();

        Assert.Equal(ExitCode.Done, Cli.Run("teach", "--explain", Repository.Example("drag-chains"), "--output", scratch.In(file)).Exit);
        Assert.True(new FileInfo(scratch.In(file)).Length > 1000);
    }
}
