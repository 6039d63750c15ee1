using System.Globalization;
using System.Text;

namespace TrialKit.Cli.Tests.Commands;

/// <summary>A trial from nothing: new, plan, sheets, made-up data, analyze, without an edit by hand.</summary>
public class PlanningTests
{
    private static readonly string[] Answers =
    [
        "--title", "Chains", "--crop", "corn", "--question", "Sooner?", "--treatments", "none,chains", "--planted", "2026-05-04",
        "--row-spacing", "30 in", "--seeding-rate", "34000 seeds/ac", "--planter-rows", "8", "--length", "1180 ft", "--replicates", "6",
    ];

    [Fact]
    public void Run_NewPlanDataAnalyze_NeedsNoEdit()
    {
        using var scratch = new Scratch();
        var trial = scratch.In("trial");

        Assert.Equal(ExitCode.Done, Cli.Run(["new", trial, .. Answers]).Exit);
        var fresh = Cli.Run("check", trial);
        Assert.Equal(ExitCode.Done, fresh.Exit);
        Assert.Empty(fresh.Error);
        Assert.Contains("A plan", fresh.Out, StringComparison.Ordinal);

        var plan = Cli.Run("plan", trial, "--seed", "42");
        Assert.Equal(ExitCode.Done, plan.Exit);
        Assert.Contains("Seed 42", plan.Out, StringComparison.Ordinal);
        var drawn = Cli.Run("check", trial);
        Assert.Equal(ExitCode.Done, drawn.Exit);
        Assert.Empty(drawn.Error);
        foreach (var verb in new[] { new[] { "analyze", trial }, ["report", trial, "--output", scratch.In("r.pdf")] })
        {
            var (exit, printed, error) = Cli.Run(verb);
            Assert.Equal(ExitCode.DataErrors, exit);
            Assert.Empty(printed);
            Assert.Contains("nothing to analyse", error, StringComparison.Ordinal);
        }

        MakeUpCounts(trial);
        var (analyzed, told, problems) = Cli.Run("analyze", trial);
        Assert.Equal(ExitCode.Done, analyzed);
        Assert.Contains("Stand", told, StringComparison.Ordinal);
        Assert.DoesNotContain("error", problems, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_NewWithoutOptions_AsksInOrder()
    {
        using var scratch = new Scratch();
        using var answers = new StringReader("Chains\ncorn\nSooner?\n\nnone, chains\n2026-05-04\n30 in\n34000 seeds/ac\n8\n1180 ft\n6\n");

        var (exit, printed, error) = Cli.Run(answers, "new", scratch.In("trial"));

        Assert.True(exit == ExitCode.Done, error);
        Assert.Contains("Treatments, the control first", printed, StringComparison.Ordinal);
        Assert.Contains("name = \"chains\"", File.ReadAllText(Path.Combine(scratch.In("trial"), "trial.toml")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--crop", "corm")]
    [InlineData("--row-spacing", "30")]
    [InlineData("--treatments", "one")]
    [InlineData("--planter-rows", "eight")]
    [InlineData("--planted", "4 May")]
    public void Run_NewWithAWrongAnswer_WritesNothing(string option, string answer)
    {
        using var scratch = new Scratch();
        string[] args = [.. Answers];
        args[Array.IndexOf(args, option) + 1] = answer;

        Assert.Equal(ExitCode.Usage, Cli.Run(["new", scratch.In("trial"), .. args]).Exit);
        Assert.False(Directory.Exists(scratch.In("trial")));
    }

    [Fact]
    public void Run_NewOverATrial_IsRefused()
    {
        using var scratch = new Scratch();
        var trial = scratch.Copy(Repository.Example("drag-chains"));

        Assert.Equal(ExitCode.Usage, Cli.Run(["new", trial, .. Answers]).Exit);
    }

    [Fact]
    public void Run_PlanTwice_KeepsThePlanUnlessToldOtherwise()
    {
        using var scratch = new Scratch();
        var trial = Planned(scratch);
        var before = Contents(trial);

        Assert.Equal(ExitCode.Done, Cli.Run("plan", trial).Exit);
        Assert.Equal(before, Contents(trial));
        var other = Cli.Run("plan", trial, "--seed", "43");
        Assert.Equal(ExitCode.DataErrors, other.Exit);
        Assert.Contains("seed 42", other.Error, StringComparison.Ordinal);
        Assert.Equal(before, Contents(trial));
        Assert.Equal(ExitCode.Done, Cli.Run("plan", trial, "--seed", "43", "--replace").Exit);
        Assert.NotEqual(before, Contents(trial));
    }

    [Fact]
    public void Run_PlanReplaced_GetsAnotherMark()
    {
        using var scratch = new Scratch();
        var trial = Planned(scratch);
        string Mark() => File.ReadLines(Path.Combine(trial, "plan.toml")).Single(line => line.StartsWith("id = ", StringComparison.Ordinal));
        var first = Mark();

        Assert.Equal(ExitCode.Done, Cli.Run("plan", trial, "--seed", "43", "--replace").Exit);
        Assert.NotEqual(first, Mark());
    }

    [Fact]
    public void Run_EveningAfterTheFirstVisit_IsNoDeadEnd()
    {
        using var scratch = new Scratch();
        var trial = Planned(scratch);
        var visits = File.ReadLines(Path.Combine(trial, "spots.csv")).Skip(1).Select(line => line.Split(',')).Select(cells => $"{cells[0]},{cells[1]},2026-05-10 17:00,0,17.424\n");
        File.WriteAllText(Path.Combine(trial, "emergence.csv"), "strip,spot,date,plants,length_ft\n" + string.Concat(visits));

        var check = Cli.Run("check", trial);
        Assert.Equal(ExitCode.Done, check.Exit);
        Assert.Single(check.Error.Split('\n'), line => line.Contains("TK333", StringComparison.Ordinal));
        Assert.Single(check.Error.Split('\n'), line => line.Contains("TK126", StringComparison.Ordinal));
        Assert.Contains("trialkit sheets", check.Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, Cli.Run("sheets", trial, "--page").Exit);
        var (exit, _, error) = Cli.Run("analyze", trial);
        Assert.Equal(ExitCode.DataErrors, exit);
        Assert.Contains("timing begins with the second visit", error, StringComparison.Ordinal);

        // Counts of another kind are analysed meanwhile.
        MakeUpCounts(trial);
        Assert.Equal(ExitCode.Done, Cli.Run("analyze", trial).Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("report", trial, "--output", scratch.In("r.pdf")).Exit);
    }

    [Theory]
    [InlineData("a day twice", "2026-05-10,2026-05-10", "each day once")]
    [InlineData("too early", "2026-05-03", "before planting")]
    public void Run_SheetsForImpossibleVisits_ExitWithUsage(string situation, string visits, string reason)
    {
        using var scratch = new Scratch();

        var (exit, _, error) = Cli.Run("sheets", Planned(scratch), "--visits", visits);

        Assert.True(exit == ExitCode.Usage, situation);
        Assert.Contains(reason, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("10", 5)]
    [InlineData("5", 14)]
    public void Run_ReplicatesOfTheGuide_PrintsTheFiguresOfTheGuide(string difference, int pairs)
    {
        var guide = File.ReadAllText(Path.Combine(Repository.Root, "docs", "guide", "laying-out-a-fair-trial.md"));
        var (_, printed, _) = Cli.Run("replicates", "--cv", "5", "--difference", difference);

        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"takes {pairs} pairs"), printed.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $" {pairs} pairs "), guide, StringComparison.Ordinal);
        Assert.Matches(@"\n +3 +2 .*\.25\s", printed);
    }

    [Theory]
    [InlineData("--cv is 'abc'; a number was expected", new[] { "--cv", "abc" })]
    [InlineData("--treatments is '2.5'; a whole number was expected", new[] { "--cv", "5", "--treatments", "2.5" })]
    [InlineData("one of them was expected", new[] { "--cv", "5", "--from", "nowhere" })]
    [InlineData("both were expected", new[] { "--cv", "5", "--strip-cost", "20" })]
    public void Run_ReplicatesOfFaultyOptions_SaysWhatWasExpected(string reason, string[] options)
    {
        var (exit, _, error) = Cli.Run(["replicates", .. options]);

        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains(reason, error, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_PlanOfATrialInUse_IsRefusedEvenWithReplace()
    {
        using var scratch = new Scratch();
        var trial = Planned(scratch);
        MakeUpCounts(trial);
        var before = Contents(trial);

        var (exit, _, error) = Cli.Run("plan", trial, "--seed", "43", "--replace");

        Assert.Equal(ExitCode.DataErrors, exit);
        Assert.Contains("wrong strip", error, StringComparison.Ordinal);
        Assert.Equal(before, Contents(trial));
    }

    [Theory]
    [InlineData("replicates = 6", "replicates = 1", "confounded")]
    [InlineData("strip = \"pass\"", "strip = \"planter half\"\nsides = \"fixed\"", "confounded with everything else by which the halves differ")]
    public void Run_PlanThatCannotBeAnalysed_SaysWhatIsConfounded(string line, string replacement, string reason)
    {
        using var scratch = new Scratch();
        Cli.Run(["new", scratch.In("trial"), .. Answers]);
        var toml = Path.Combine(scratch.In("trial"), "trial.toml");
        File.WriteAllText(toml, File.ReadAllText(toml).Replace(line, replacement, StringComparison.Ordinal));

        var (exit, _, error) = Cli.Run("plan", scratch.In("trial"));

        Assert.Equal(ExitCode.DataErrors, exit);
        Assert.Contains(reason, error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(scratch.In("trial"), "plan.toml")));
    }

    [Fact]
    public void Run_PlanWithACorner_WritesTheMapForAPhone()
    {
        using var scratch = new Scratch();
        Cli.Run(["new", scratch.In("trial"), .. Answers]);
        var toml = Path.Combine(scratch.In("trial"), "trial.toml");
        File.WriteAllText(toml, File.ReadAllText(toml).Replace("# corner_", "corner_", StringComparison.Ordinal).Replace("# bearing", "bearing", StringComparison.Ordinal));

        Assert.Equal(ExitCode.Done, Cli.Run("plan", scratch.In("trial"), "--seed", "1", "--quiet").Exit);
        Assert.All(["strips.csv", "spots.csv", "plan.toml", "map.pdf", "map.png", "map.geojson"], file => Assert.True(new FileInfo(Path.Combine(scratch.In("trial"), file)).Length > 0, file));
    }

    [Fact]
    public void Run_Sheets_WritesPaperWorkbookAndPage()
    {
        using var scratch = new Scratch();
        var trial = Planned(scratch);

        Assert.Equal(ExitCode.Done, Cli.Run("sheets", trial, "--visits", "2026-05-10,2026-05-12", "--paper", "a4").Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("sheets", trial, "--page").Exit);
        Assert.Equal(["field-page.html", "field-sheets.pdf", "trial.xlsx"], Directory.EnumerateFiles(Path.Combine(trial, "sheets")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(ExitCode.Done, Cli.Run("check", trial).Exit);
        Assert.Equal(ExitCode.Usage, Cli.Run("sheets", trial, "--output", trial).Exit);
        Assert.Equal(ExitCode.Usage, Cli.Run("sheets", trial, "--visits", "May 10").Exit);
    }

    [Fact]
    public void Run_SheetsBeforeThePlan_SaysWhatToDo()
    {
        using var scratch = new Scratch();
        Cli.Run(["new", scratch.In("trial"), .. Answers]);

        var (exit, _, error) = Cli.Run("sheets", scratch.In("trial"));

        Assert.Equal(ExitCode.DataErrors, exit);
        Assert.Contains("trialkit plan", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Replicates_TellsPairsSpotsAndWritesTableAndFigure()
    {
        using var scratch = new Scratch();

        var (exit, printed, _) = Cli.Run("replicates", "--cv", "5", "--difference", "10", "--strip-variance", "4", "--spot-variance", "25", "--strip-cost", "20", "--spot-cost", "1", "--output", scratch.In("out"));

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("takes 5 pairs", printed.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("11.2", printed, StringComparison.Ordinal);
        Assert.Matches(@"6 +5 +8\.4", printed);
        Assert.All(printed.Split('\n').Where(line => !line.Contains(scratch.Folder, StringComparison.Ordinal)), line => Assert.True(line.Length <= 80, line));
        Assert.True(File.Exists(Path.Combine(scratch.In("out"), "replicates.csv")));
        Assert.True(new FileInfo(Path.Combine(scratch.In("out"), "power.png")).Length > 1000);
    }

    [Fact]
    public void Run_ReplicatesFromEarlierTrials_UsesTheirSpread()
    {
        var (exit, printed, _) = Cli.Run("replicates", "--from", Repository.Example("drag-chains"), "--measure", "yield");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("of the mean in yield, on 5 degrees of freedom", printed.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no spread", new[] { "replicates" })]
    [InlineData("negative spread", new[] { "replicates", "--cv", "-5" })]
    [InlineData("one treatment", new[] { "replicates", "--cv", "5", "--treatments", "1" })]
    [InlineData("certainty", new[] { "replicates", "--cv", "5", "--power", "1" })]
    [InlineData("no difference", new[] { "replicates", "--cv", "5", "--difference", "0" })]
    public void Run_ReplicatesOutOfRange_ExitsWithUsage(string situation, string[] args) =>
        Assert.True(Cli.Run(args).Exit == ExitCode.Usage, situation);

    private static string Planned(Scratch scratch)
    {
        var trial = scratch.In("trial");
        Assert.Equal(ExitCode.Done, Cli.Run(["new", trial, .. Answers]).Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("plan", trial, "--seed", "42").Exit);
        return trial;
    }

    private static string[] Contents(string folder) => [.. Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal).Select(file => Convert.ToBase64String(File.ReadAllBytes(file)))];

    /// <summary>A count at each spot that was drawn.</summary>
    private static void MakeUpCounts(string trial)
    {
        var text = new StringBuilder("strip,spot,date,length_ft,plants,planter_row\n");
        foreach (var (cells, index) in File.ReadLines(Path.Combine(trial, "spots.csv")).Skip(1).Select((line, index) => (line.Split(','), index)))
        {
            text.Append(CultureInfo.InvariantCulture, $"{cells[0]},{cells[1]},2026-06-08,{cells[5]},{28 + (index % 5)},{cells[4]}\n");
        }

        File.WriteAllText(Path.Combine(trial, "stand-counts.csv"), text.ToString());
    }
}
