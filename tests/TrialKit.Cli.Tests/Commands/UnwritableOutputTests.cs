namespace TrialKit.Cli.Tests.Commands;

/// <summary>Where an output cannot be written the program says so, names the file and ends with 3; the trial's own folder is never written to by commands that only read it.</summary>
public class UnwritableOutputTests
{
    private static string Example => Repository.Example("drag-chains");

    [Theory]
    [InlineData("report", "file/report.pdf")]
    [InlineData("report", "file/report.html")]
    [InlineData("analyze", "file/out")]
    [InlineData("figures", "file/out")]
    public void Run_OutputBelowAFile_ExitsWithFailureAndNamesIt(string verb, string output)
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch.In("file"), "mine");

        var (exit, _, error) = Cli.Run(verb, Example, "--output", scratch.In(output));

        Assert.Equal(ExitCode.Failure, exit);
        Assert.Contains(scratch.In(output), error, StringComparison.Ordinal);
        Assert.DoesNotContain("defect", error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(scratch.In("file")));
    }

    /// <summary>A folder in which no one may make a file, whoever asks.</summary>
    [Fact]
    public void Run_OutputInAFolderWithoutRights_ExitsWithFailureAndNamesIt()
    {
        if (!Directory.Exists("/proc/self"))
        {
            return;
        }

        var (exit, _, error) = Cli.Run("report", Example, "--output", "/proc/report.pdf");

        Assert.Equal(ExitCode.Failure, exit);
        Assert.Contains("'/proc/report.pdf' cannot be written", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("analyze", "--output", "{out}")]
    [InlineData("report", "--output", "{out}/a.pdf")]
    [InlineData("figures", "--output", "{out}")]
    public void Run_TrialFolderThatIsReadOnly_IsReadAndLeftAsItWas(string verb, params string[] options)
    {
        using var scratch = new Scratch();
        var trial = scratch.Copy(Example);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(trial, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        var before = Look(trial);
        var (exit, _, error) = Cli.Run([verb, trial, .. options.Select(option => option.Replace("{out}", scratch.In("out"), StringComparison.Ordinal))]);

        Assert.True(exit == ExitCode.Done, error);
        Assert.Equal(before, Look(trial));
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(trial, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    // A file made and removed again would show in the folder's own time.
    private static string Look(string folder) => string.Join('\n', Directory.EnumerateFileSystemEntries(folder).Append(folder).Order(StringComparer.Ordinal).Select(path => $"{path} {File.GetLastWriteTimeUtc(path):O}"));
}
