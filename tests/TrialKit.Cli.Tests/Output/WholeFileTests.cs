using TrialKit.Cli.Output;

namespace TrialKit.Cli.Tests.Output;

public class WholeFileTests
{
    /// <summary>A real full disk: the device that has no room.</summary>
    [Fact]
    public void Write_DiskIsFull_LeavesTheOldFileAndNamesIt()
    {
        using var scratch = new Scratch();
        var path = scratch.In("report.pdf");
        File.WriteAllText(path, "old");

        var failure = Assert.Throws<IOException>(() => WholeFile.Write(path, stream =>
        {
            stream.Write("the beginning of a new one"u8);
            Fill();
        }));

        Assert.Contains(path, failure.Message, StringComparison.Ordinal);
        Assert.Equal("old", File.ReadAllText(path));
        Assert.Single(Directory.EnumerateFileSystemEntries(scratch.Folder));
    }

    [Fact]
    public void Write_FailureThatIsNone_LeavesNoDraft()
    {
        using var scratch = new Scratch();

        Assert.Throws<InvalidOperationException>(() => WholeFile.Write(scratch.In("a.csv"), _ => throw new InvalidOperationException()));
        Assert.Empty(Directory.EnumerateFileSystemEntries(scratch.Folder));
    }

    [Fact]
    public void Write_DraftsOfRunsThatWereEnded_DoNotStandInTheWay()
    {
        using var scratch = new Scratch();
        var (yesterdays, recent, another) = (scratch.In(".trialkit-yesterday.part"), scratch.In(".trialkit-now.part"), scratch.In("mine.part"));
        foreach (var file in (string[])[yesterdays, recent, another])
        {
            File.WriteAllText(file, "half");
        }

        File.SetLastWriteTimeUtc(yesterdays, DateTime.UtcNow.AddDays(-2));
        File.SetLastWriteTimeUtc(another, DateTime.UtcNow.AddDays(-2));

        WholeFile.Write(scratch.In("a.csv"), stream => stream.Write("whole"u8));

        Assert.Equal("whole", File.ReadAllText(scratch.In("a.csv")));
        Assert.Equal([".trialkit-now.part", "a.csv", "mine.part"], Directory.EnumerateFiles(scratch.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Write_ManyAtOnceToOneName_LeavesOneOfThemWhole()
    {
        using var scratch = new Scratch();
        Parallel.For(0, 50, number => WholeFile.Write(scratch.In("a.csv"), stream => stream.Write([.. Enumerable.Repeat((byte)number, 100_000)])));

        var found = File.ReadAllBytes(scratch.In("a.csv"));

        Assert.Equal(100_000, found.Length);
        Assert.Single(found.Distinct());
        Assert.Single(Directory.EnumerateFileSystemEntries(scratch.Folder));
    }

    private static void Fill()
    {
        if (!File.Exists("/dev/full"))
        {
            throw new IOException("There is not enough space on the disk.");
        }

        using var full = new FileStream("/dev/full", FileMode.Open, FileAccess.Write);
        full.Write(new byte[100_000]);
        full.Flush();
    }
}
