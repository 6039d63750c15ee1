using System.Diagnostics;
using System.Net.Sockets;
using System.Text;
using TrialKit.Ingest;

namespace TrialKit.Tests.Ingest.Tables;

/// <summary>What stands where a file is expected and is none is refused at once, and not waited for or passed over.</summary>
public class TrialFileTests
{
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(30);

    public static TheoryData<string> Files => ["trial.toml", "plan.toml", "trial.xlsx", "strips.csv", "stand-counts.csv", "measures.csv", "weather.csv"];

    [Theory]
    [MemberData(nameof(Files))]
    public async Task Read_FolderInAFilesPlace_IsRefused(string file)
    {
        using var folder = Without(file);
        Directory.CreateDirectory(Path.Combine(folder.Path, file));

        await Refuses(folder, file);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public async Task Read_PipeInAFilesPlace_IsRefusedAndNotWaitedFor(string file)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = Without(file);
        using (var make = Process.Start("mkfifo", [Path.Combine(folder.Path, file)]))
        {
            await make.WaitForExitAsync(TestContext.Current.CancellationToken);
        }

        await Refuses(folder, file);
    }

    [Fact]
    public async Task Read_SocketInAFilesPlace_IsRefused()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = Without("measures.csv");
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        socket.Bind(new UnixDomainSocketEndPoint(Path.Combine(folder.Path, "measures.csv")));

        var reading = await Task.Run(folder.Read).WaitAsync(Soon, TestContext.Current.CancellationToken);

        Assert.Equal(("TK505", "measures.csv:1:1"), (Assert.Single(reading.Errors).Code, reading.Errors.First().Location.ToString()));
    }

    [Fact]
    public void Read_LinkToADevice_IsRefused()
    {
        using var folder = Without("measures.csv");
        File.CreateSymbolicLink(Path.Combine(folder.Path, "measures.csv"), "/dev/zero");

        Assert.Contains(folder.Read().Errors, problem => problem.Code == "TK506");
    }

    [Fact]
    public void Read_LinkWithinTheFolder_IsRead()
    {
        using var folder = TrialFolder.Sound();
        File.Move(Path.Combine(folder.Path, "measures.csv"), Path.Combine(folder.Path, "values.csv"));
        File.CreateSymbolicLink(Path.Combine(folder.Path, "measures.csv"), Path.Combine(folder.Path, "values.csv"));

        Assert.Equal(2, folder.Read().Trial!.Measurements.Length);
    }

    [Fact]
    public void Read_EmptyFile_IsReadAsEmpty()
    {
        using var folder = TrialFolder.Sound().Write("measures.csv", string.Empty);

        Assert.Equal(["measures.csv:1:1: error TK101: the table has no header; a first line that names the columns was expected"], folder.Problems());
    }

    [Fact]
    public void Read_WeatherFileThatIsAPipe_IsRefused()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = TrialFolder.Empty();
        var pipe = Path.Combine(folder.Path, "days.csv");
        using (var make = Process.Start("mkfifo", [pipe]))
        {
            make.WaitForExit();
        }

        Assert.Equal("TK510", Assert.Single(WeatherReader.Read(pipe).Problems).Code);
    }

    [Fact]
    public void Read_LongSettings_AreRefused()
    {
        using var folder = TrialFolder.Sound();
        File.AppendAllText(Path.Combine(folder.Path, "trial.toml"), new string('#', 1 << 20));

        Assert.Equal("trial.toml:1:1: error TK503: the file has 1.0 MB; at most 1 MB was expected", folder.Problems()[0]);
    }

    [Fact]
    public void Read_MoreRowsThanTheLimit_AreRefused()
    {
        using var folder = TrialFolder.Sound().Write("measures.csv", "strip,measure,value\n" + string.Concat(Enumerable.Repeat("A1,a,1\n", 1_000_001)));

        Assert.Equal(["measures.csv:1:1: error TK511: the table has more than 1,000,000 rows; a table of a trial was expected"], folder.Problems());
    }

    [Fact]
    public void Read_MoreColumnsThanTheLimit_AreRefused()
    {
        using var folder = TrialFolder.Sound().Write("measures.csv", "strip,measure,value" + string.Concat(Enumerable.Repeat(",a", 1000)) + "\n");

        Assert.Equal(["measures.csv:1:1: error TK511: the table has more than 1,000 columns; a table of a trial was expected"], folder.Problems());
    }

    [Theory]
    [InlineData("in a table", "measures.csv", "residue", "resi\u001b[31mdue", "TK116")]
    [InlineData("in the settings", "trial.toml", "No chains", "No \\u001b[2Jchains", "TK225")]
    public void Read_ControlCharacter_IsALocatedError(string name, string file, string old, string replacement, string code)
    {
        using var folder = TrialFolder.Sound();
        folder.Write(file, Encoding.UTF8.GetBytes(TrialFolder.SoundText(file).Replace(old, replacement, StringComparison.Ordinal)));

        var problems = folder.Read().Problems;

        Assert.True(problems.Any(problem => problem.Code == code && problem.Location.Line > 1), $"{name}: {string.Join("; ", problems)}");
    }

    private static TrialFolder Without(string file)
    {
        var folder = TrialFolder.Sound();
        return File.Exists(Path.Combine(folder.Path, file)) ? folder.Remove(file) : folder;
    }

    private static async Task Refuses(TrialFolder folder, string file)
    {
        var reading = await Task.Run(folder.Read).WaitAsync(Soon, TestContext.Current.CancellationToken);

        Assert.Null(reading.Trial);
        Assert.Contains($"{file}:1:1: error TK510: a folder, pipe, device or socket stands here; a file was expected", reading.Problems.Select(problem => problem.ToString()));
    }
}
