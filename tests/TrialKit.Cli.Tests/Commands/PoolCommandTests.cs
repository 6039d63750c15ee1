namespace TrialKit.Cli.Tests.Commands;

/// <summary><c>trialkit pool</c> as a pipe sees it.</summary>
public sealed class PoolCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Run_FolderOfTrials_PrintsSitesAndTheirMeanAndWritesTables()
    {
        var fields = Fields("north", "south");
        var output = scratch.In("results");
        var (exit, text, error) = Cli.Run("pool", fields, "--output", output);

        Assert.True(exit == ExitCode.Done, error);
        Assert.Contains("Two trials together: north, south", text, StringComparison.Ordinal);
        Assert.Contains("together", text, StringComparison.Ordinal);
        Assert.Contains("At another site like these", text, StringComparison.Ordinal);
        Assert.Equal(
            ["findings.csv", "methods.csv", "mixed-model.csv", "pool.json", "pooled.csv", "sites.csv"],
            Directory.EnumerateFiles(output).Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("pool.pdf", "%PDF-")]
    [InlineData("pool.json", "{")]
    public void Run_OutputNamedAsAFile_IsThatFileTwiceAlike(string name, string beginning)
    {
        var fields = Fields("north", "south");
        var (first, second) = (scratch.In("1" + name), scratch.In("2" + name));

        Assert.Equal(ExitCode.Done, Cli.Run("pool", Path.Combine(fields, "north"), Path.Combine(fields, "south"), "-o", first, "-q").Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("pool", Path.Combine(fields, "north"), Path.Combine(fields, "south"), "-o", second, "-q").Exit);

        var bytes = File.ReadAllBytes(first);
        Assert.StartsWith(beginning, System.Text.Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
        Assert.Equal(bytes, File.ReadAllBytes(second));
    }

    [Fact]
    public void Run_OtherUnitsAndControl_NamesTheSiteAndWritesNothing()
    {
        var output = scratch.In("pool.json");
        var (exit, text, error) = Cli.Run("pool", Repository.Example("drag-chains"), Repository.Example("closing-wheels"), "-o", output);

        Assert.Equal(ExitCode.DataErrors, exit);
        Assert.Contains("closing-wheels: prints metric units where drag-chains prints us", error, StringComparison.Ordinal);
        Assert.Contains("closing-wheels: the control is 'rubber' where drag-chains has 'none'", error, StringComparison.Ordinal);
        Assert.Empty(text);
        Assert.False(File.Exists(output));
    }

    [Fact]
    public void Run_OneTrial_SaysThatTwoAreNeeded()
    {
        var (exit, _, error) = Cli.Run("pool", Repository.Example("drag-chains"));

        Assert.Equal(ExitCode.DataErrors, exit);
        Assert.Contains("two trials or more were expected", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_FolderWithoutTrials_IsAWrongCommandLine()
    {
        var (exit, _, error) = Cli.Run("pool", scratch.Folder);

        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains("a folder of trial folders, was expected", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OutputThatIsATrialFolder_IsRefused()
    {
        var fields = Fields("north", "south");

        Assert.Equal(ExitCode.Usage, Cli.Run("pool", fields, "-o", Path.Combine(fields, "north")).Exit);
    }

    /// <summary>A folder with copies of an example trial under several names.</summary>
    private string Fields(params string[] names)
    {
        var fields = scratch.In("fields");
        foreach (var name in names)
        {
            Directory.CreateDirectory(Path.Combine(fields, name));
            foreach (var file in Directory.EnumerateFiles(Repository.Example("drag-chains")))
            {
                File.Copy(file, Path.Combine(fields, name, Path.GetFileName(file)));
            }
        }

        return fields;
    }
}
