namespace TrialKit.Cli.Tests;

public class CommandLineTests
{
    private static string Example => Repository.Example("drag-chains");

    [Fact]
    public void Run_Help_ListsEveryVerb()
    {
        var (exit, printed, _) = Cli.Run("--help");

        Assert.Equal(ExitCode.Done, exit);
        Assert.All(["check", "analyze", "report", "collect", "pool", "starter", "forecast", "heat"], verb => Assert.Contains(verb, printed, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("check")]
    [InlineData("analyze")]
    [InlineData("report")]
    [InlineData("starter")]
    public void Run_HelpOfAVerb_NamesItsArgumentsAndExitCodes(string verb)
    {
        var (exit, printed, _) = Cli.Run(verb, "--help");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("FOLDER", printed, StringComparison.Ordinal);
        Assert.Contains("--quiet", printed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no verb", new string[0])]
    [InlineData("unknown verb", new[] { "analyse-it" })]
    [InlineData("no folder", new[] { "check" })]
    [InlineData("unknown option", new[] { "check", ".", "--loud" })]
    [InlineData("report without output", new[] { "report", "." })]
    [InlineData("replant without a date", new[] { "replant", "--stand", "20000 plants/ac", "--planted", "2026-04-25" })]
    [InlineData("unknown paper", new[] { "report", ".", "--output", "x.pdf", "--paper", "a3" })]
    public void Run_WrongCommandLine_ExitsWithUsage(string situation, string[] args)
    {
        var (exit, _, error) = Cli.Run(args);

        Assert.True(exit == ExitCode.Usage, $"{situation}: exit {exit}");
        Assert.Contains("--help", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_FolderThatIsNotThere_ExitsWithUsageAndNamesIt()
    {
        var (exit, _, error) = Cli.Run("analyze", "no-such-folder");

        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains("no-such-folder", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_BrokenTrial_ExitsWithDataErrorsAndWritesNothing()
    {
        using var scratch = new Scratch();
        var trial = scratch.Copy(Example);
        File.AppendAllText(Path.Combine(trial, "stand-counts.csv"), "S99,1,2014-06-09,17.424,twelve\n");

        var analyze = Cli.Run("analyze", trial, "--output", scratch.In("out"));
        var report = Cli.Run("report", trial, "--output", scratch.In("out.pdf"));

        Assert.Equal(ExitCode.DataErrors, analyze.Exit);
        Assert.Equal(ExitCode.DataErrors, report.Exit);
        Assert.Matches(@"stand-counts\.csv:\d+:\d+: error TK", analyze.Error);
        Assert.Empty(analyze.Out);
        Assert.False(Directory.Exists(scratch.In("out")));
        Assert.False(File.Exists(scratch.In("out.pdf")));
    }

    [Fact]
    public void Run_OutputThatCannotBeWritten_ExitsWithFailureAndNamesIt()
    {
        using var scratch = new Scratch();
        Directory.CreateDirectory(scratch.In("taken.pdf"));

        var (exit, _, error) = Cli.Run("report", Example, "--output", scratch.In("taken.pdf"));

        Assert.Equal(ExitCode.Failure, exit);
        Assert.Contains("taken.pdf", error, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFiles(scratch.Folder, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void Run_ReportNamedHtml_WritesOneHtmlFile()
    {
        using var scratch = new Scratch();

        Assert.Equal(ExitCode.Done, Cli.Run("report", Example, "--output", scratch.In("a.html")).Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("report", Example, "--output", scratch.In("b.html")).Exit);
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(scratch.In("a.html")), StringComparison.Ordinal);
        Assert.Equal(File.ReadAllBytes(scratch.In("a.html")), File.ReadAllBytes(scratch.In("b.html")));
        Assert.Equal(2, Directory.EnumerateFileSystemEntries(scratch.Folder).Count());
    }

    [Fact]
    public void Run_Figures_WritesEachAsSvgAndPng()
    {
        using var scratch = new Scratch();
        var (exit, printed, _) = Cli.Run("figures", Example, "--output", scratch.In("figures"));
        var files = Directory.EnumerateFiles(scratch.In("figures")).Select(Path.GetFileName).Order(StringComparer.Ordinal).ToArray();

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("emergence", printed, StringComparison.Ordinal);
        Assert.Contains("emergence.svg", files);
        Assert.Equal(files.Where(file => file!.EndsWith(".svg", StringComparison.Ordinal)).Select(file => Path.ChangeExtension(file, ".png")), files.Where(file => file!.EndsWith(".png", StringComparison.Ordinal)));
        Assert.Contains("aria-label=", File.ReadAllText(Path.Combine(scratch.In("figures"), "emergence.svg")), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_FailedReport_LeavesTheOldOneAsItWas()
    {
        using var scratch = new Scratch();
        var trial = scratch.Copy(Example);
        File.WriteAllText(scratch.In("old.pdf"), "old");
        File.WriteAllText(Path.Combine(trial, "strips.csv"), "strip,block\n");

        Assert.Equal(ExitCode.DataErrors, Cli.Run("report", trial, "--output", scratch.In("old.pdf")).Exit);
        Assert.Equal("old", File.ReadAllText(scratch.In("old.pdf")));
    }

    [Theory]
    [InlineData("report", "strips.csv")]
    [InlineData("report", "trial.toml")]
    [InlineData("report", "/dev/null")]
    [InlineData("analyze", ".")]
    public void Run_OutputOverTheTrialsOwnFiles_IsRefused(string verb, string output)
    {
        using var scratch = new Scratch();
        var trial = scratch.Copy(Example);
        var before = Contents(trial);

        Assert.Equal(ExitCode.Usage, Cli.Run(verb, trial, "--output", Path.Combine(trial, output)).Exit);
        Assert.Equal(before, Contents(trial));
    }

    [Fact]
    public void Run_OutputIntoAnotherTrial_IsRefusedAlsoThroughALink()
    {
        using var scratch = new Scratch();
        var trial = scratch.Copy(Example);
        Directory.CreateSymbolicLink(scratch.In("link"), trial);
        var before = Contents(trial);

        Assert.Equal(ExitCode.Usage, Cli.Run("analyze", Example, "--output", trial).Exit);
        Assert.Equal(ExitCode.Usage, Cli.Run("analyze", Example, "--output", scratch.In("link")).Exit);
        Assert.Equal(before, Contents(trial));
    }

    [Theory]
    [InlineData("check")]
    [InlineData("analyze")]
    public void Run_Quiet_PrintsNothingOfACleanTrial(string verb)
    {
        var (exit, printed, error) = Cli.Run(verb, Example, "--quiet");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Empty(printed);
        Assert.Empty(error);
    }

    [Fact]
    public void Run_Analyze_StaysWithinEightyColumns()
    {
        var (_, printed, _) = Cli.Run("analyze", Example);

        Assert.All(printed.Split('\n').Where(line => !line.Contains(Example, StringComparison.Ordinal)), line => Assert.True(line.Length <= 80, line));
    }

    private static string[] Contents(string folder) => [.. Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal).Select(File.ReadAllText)];
}
