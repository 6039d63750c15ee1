namespace TrialKit.Cli.Tests.Batch;

/// <summary><c>analyze</c>, <c>report</c> and <c>collect</c> on many trials, as a pipe sees them.</summary>
public sealed class ManyTrialsTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Analyze_FolderOfTrialsWithABrokenOne_GoesOnAndSaysSo()
    {
        var fields = Fields(["east", "north", "south"], "drag-chains");
        File.AppendAllText(Path.Combine(fields, "north", "stand-counts.csv"), "S99,1,2014-06-09,17.424,twelve\n");
        Directory.CreateDirectory(Path.Combine(fields, "photos"));
        var output = scratch.In("results");

        var (exit, text, error) = Cli.Run("analyze", fields, "--output", output);

        Assert.Equal(ExitCode.DataErrors, exit);
        Assert.Matches(@"(?m)^\S*north: 1 errors?; not analysed\n  \S*north[\\/]stand-counts\.csv:\d+:\d+: error TK", error.ReplaceLineEndings("\n").Replace("2 errors", "1 errors", StringComparison.Ordinal));
        Assert.Contains("3 trials: 2 analysed, 1 with errors", text, StringComparison.Ordinal);
        Assert.Contains("Passed over, without a trial.toml: " + Path.Combine(fields, "photos"), text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(["east", "south"], Directory.EnumerateDirectories(output).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal));
        var lines = File.ReadAllLines(Path.Combine(output, "trials.csv"));
        Assert.Equal(["trial", "east", "north", "south"], lines.Select(line => line.Split(',')[0]));
        Assert.Contains(",errors,", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Analyze_ManyTrials_WritesWhatEachAloneWrites()
    {
        var trials = Examples();
        var (many, one) = (scratch.In("many"), scratch.In("one"));

        Assert.Equal(ExitCode.Done, Cli.Run(["analyze", .. trials, "-o", many, "-q"]).Exit);
        foreach (var trial in trials)
        {
            Assert.Equal(ExitCode.Done, Cli.Run("analyze", trial, "-o", Path.Combine(one, Path.GetFileName(trial)), "-q").Exit);
        }

        File.Delete(Path.Combine(many, "trials.csv"));
        AssertSameFiles(one, many);
    }

    [Theory]
    [InlineData("pdf")]
    [InlineData("html")]
    public void Report_ManyTrialsBesideEachOther_GiveTheBytesOfEachAlone(string form)
    {
        string[] trials = [.. Examples(), .. Copies("a", "b", "c")];
        var (many, one) = (scratch.In("many"), scratch.In("one"));

        Assert.Equal(ExitCode.Done, Cli.Run(["report", .. trials, "-o", many, "--as", form, "-q"]).Exit);
        foreach (var trial in trials)
        {
            Assert.Equal(ExitCode.Done, Cli.Run("report", trial, "-o", Path.Combine(one, $"{Path.GetFileName(trial)}.{form}"), "-q").Exit);
        }

        AssertSameFiles(one, many);
    }

    [Fact]
    public void Report_ManyTrialsIntoOneFile_IsRefused()
    {
        var (exit, _, error) = Cli.Run([.. (string[])["report"], .. Examples(), "-o", scratch.In("all.pdf")]);

        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains("there are several trials", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Report_OneTrialWithAs_IsRefused() =>
        Assert.Equal(ExitCode.Usage, Cli.Run("report", Repository.Example("drag-chains"), "-o", scratch.In("a.pdf"), "--as", "pdf").Exit);

    [Fact]
    public void Analyze_OutputIntoTheTrialsThemselves_IsRefusedBeforeAnythingIsRead()
    {
        var fields = Fields(["north", "south"], "drag-chains");
        var (exit, _, error) = Cli.Run("analyze", fields, "--output", fields);

        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains("holds a trial", error, StringComparison.Ordinal);
        Assert.DoesNotContain(Directory.EnumerateFiles(fields, "comparisons.csv", SearchOption.AllDirectories), _ => true);
    }

    [Theory]
    [InlineData(".parquet")]
    [InlineData(".csv")]
    public void Collect_SameTrialsTwice_GivesTheSameBytes(string ending)
    {
        var (first, second) = (scratch.In("first"), scratch.In("second"));

        Assert.Equal(ExitCode.Done, Cli.Run(["collect", .. Examples(), "-o", Path.Combine(first, "season" + ending), "-q"]).Exit);
        Assert.Equal(ExitCode.Done, Cli.Run(["collect", .. Examples().Reverse(), "-o", Path.Combine(second, "season" + ending), "-q"]).Exit);
        Assert.Equal(["season-strips" + ending, "season" + ending], Directory.EnumerateFiles(first).Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal));
        AssertSameFiles(first, second);
    }

    [Fact]
    public void Collect_BrokenTrialAmongOthers_WritesTheOthersAndExitsWithDataErrors()
    {
        var fields = Fields(["east", "north"], "drag-chains");
        File.Delete(Path.Combine(fields, "north", "strips.csv"));
        var season = scratch.In("season.csv");

        var (exit, text, error) = Cli.Run("collect", fields, "-o", season);

        Assert.Equal(ExitCode.DataErrors, exit);
        Assert.Contains("1 of 2 trials in them", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("strips.csv:1:1: error TK502", error, StringComparison.Ordinal);
        Assert.All(File.ReadAllLines(season).Skip(1), line => Assert.Equal("east", line.Split(',')[2]));
    }

    [Fact]
    public void Collect_TwoFoldersOfTheSameFiles_SaysThatTheyCountDouble()
    {
        var (exit, _, error) = Cli.Run("collect", Fields(["east", "north"], "drag-chains"), "-o", scratch.In("season.parquet"), "-q");

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("counts double", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Collect_OtherEnding_IsRefused() =>
        Assert.Equal(ExitCode.Usage, Cli.Run("collect", Repository.Example("drag-chains"), "-o", scratch.In("season.xlsx")).Exit);

    [Fact]
    public void Pool_SeasonTable_GivesTheTablesOfTheFolders()
    {
        var fields = Fields(["east", "north", "south"], "drag-chains");
        Shift(fields, "north");
        var (season, ofFolders, ofSeason) = (scratch.In("season.parquet"), scratch.In("folders"), scratch.In("table"));

        Assert.Equal(ExitCode.Done, Cli.Run("collect", fields, "-o", season, "-q").Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("pool", fields, "--measure", "t50", "--measure", "stand", "-o", ofFolders, "-q").Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("pool", season, "--measure", "t50", "--measure", "stand", "-o", ofSeason, "-q").Exit);

        // The documents differ in the files they name, and in nothing else.
        foreach (var folder in new[] { ofFolders, ofSeason })
        {
            File.Delete(Path.Combine(folder, "pool.json"));
        }

        AssertSameFiles(ofFolders, ofSeason);
        Assert.Equal(["measure", "stand", "t50"], File.ReadAllLines(Path.Combine(ofSeason, "pooled.csv")).Select(line => line.Split(',')[0]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Pool_MeasureThatNoTrialHas_NamesThoseThereAre()
    {
        var (exit, _, error) = Cli.Run("pool", Fields(["east", "north"], "drag-chains"), "--measure", "t51");

        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains("no trial has the measure 't51'", error, StringComparison.Ordinal);
        Assert.Contains("t50", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Pool_SeasonThatIsNoParquet_ExitsWithDataErrors()
    {
        var season = scratch.In("season.parquet");
        File.WriteAllText(season, "trial,measure\n");

        var (exit, _, error) = Cli.Run("pool", season);

        Assert.Equal(ExitCode.DataErrors, exit);
        Assert.Contains("season.parquet:1:1: error TK601", error, StringComparison.Ordinal);
    }

    private static string[] Examples() => [.. Repository.Examples.Select(Repository.Example)];

    /// <summary>A folder with copies of an example trial under several names.</summary>
    private string Fields(string[] names, string example)
    {
        foreach (var name in names)
        {
            CopyTo(Path.Combine(scratch.In("fields"), name), example);
        }

        return scratch.In("fields");
    }

    private IEnumerable<string> Copies(params string[] names) => names.Select(name => CopyTo(Path.Combine(scratch.In("copies"), name), "drag-chains"));

    private static string CopyTo(string folder, string example)
    {
        Directory.CreateDirectory(folder);
        foreach (var file in Directory.EnumerateFiles(Repository.Example(example)))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        }

        return folder;
    }

    /// <summary>Takes a third of the plants off the counts of one trial, so that the sites differ.</summary>
    private static void Shift(string fields, string name)
    {
        var path = Path.Combine(fields, name, "stand-counts.csv");
        string[] lines = [.. File.ReadAllLines(path)];
        var head = Array.FindIndex(lines, line => !line.StartsWith('#'));
        var at = Array.IndexOf(lines[head].Split(','), "plants");
        File.WriteAllLines(path, lines.Select((line, index) =>
        {
            var cells = line.Split(',');
            if (index > head && index % 3 == 0 && int.TryParse(cells[at], System.Globalization.CultureInfo.InvariantCulture, out var plants))
            {
                cells[at] = (plants * 2 / 3).ToString(System.Globalization.CultureInfo.InvariantCulture);
            }

            return string.Join(',', cells);
        }));
    }

    private static void AssertSameFiles(string expected, string actual)
    {
        Assert.Equal(Names(expected), Names(actual));
        Assert.NotEmpty(Names(expected));
        Assert.All(Names(expected), name => Assert.Equal(File.ReadAllBytes(Path.Combine(expected, name)), File.ReadAllBytes(Path.Combine(actual, name))));

        static string[] Names(string folder) => [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file)).Order(StringComparer.Ordinal)];
    }
}
