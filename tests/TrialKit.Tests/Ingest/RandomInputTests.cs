using CsCheck;

namespace TrialKit.Tests.Ingest;

/// <summary>Whatever the files hold, the reader reports; it never throws.</summary>
public class RandomInputTests
{
    private const int Samples = 300;

    private static readonly string[] Files =
    [
        "trial.toml", "strips.csv", "stand-counts.csv", "emergence.csv", "plants.csv", "harvest.csv", "measures.csv", "weather.csv", "soil-temperature.csv",
    ];

    private static readonly string[] Telltales =
    [
        "\"", ",", ";", "\n", "\r", "\t", "#", "[", "]", "{", "=", ".", "-", "1", "strip", "date", "\uFEFF", "e9", "'''", "\"\"\"",
    ];

    private static readonly Gen<string> Telltale = Gen.Int[0, Telltales.Length - 1].Select(index => Telltales[index]);

    private static readonly Gen<string> File = Gen.Int[0, Files.Length - 1].Select(index => Files[index]);

    [Fact]
    public void Read_RandomBytes_NeverThrows() => Sample(Gen.Select(File, Gen.Byte.Array[0, 300]));

    [Fact]
    public void Read_TruncatedFile_NeverThrows() => Sample(Gen.Select(File, Gen.Double.Unit)
        .Select((file, share) => (file, Sound(file)[..(int)(share * Sound(file).Length)])));

    [Fact]
    public void Read_FileWithBytesChanged_NeverThrows() => Sample(Gen.Select(File, Gen.Select(Gen.Double.Unit, Gen.Byte).Array[1, 5])
        .Select((file, changes) =>
        {
            var bytes = Sound(file);
            foreach (var (place, value) in changes)
            {
                bytes[Math.Min(bytes.Length - 1, (int)(place * bytes.Length))] = value;
            }

            return (file, bytes);
        }));

    [Fact]
    public void Read_FileOfTelltaleCharacters_NeverThrows() => Sample(Gen.Select(File, Telltale.Array[0, 60])
        .Select((file, parts) => (file, System.Text.Encoding.UTF8.GetBytes(string.Concat(parts)))));

    [Fact]
    public void Read_WorkbookWithBytesChanged_NeverThrows()
    {
        var sound = new SheetWriter().AddCsv("harvest", TrialFolder.SoundText("harvest.csv")).ToBytes();
        using var folder = TrialFolder.Sound().Remove("harvest.csv");
        Gen.Select(Gen.Int[0, sound.Length - 1], Gen.Byte).Array[1, 4].Sample(
            changes =>
            {
                var bytes = sound.ToArray();
                foreach (var (place, value) in changes)
                {
                    bytes[place] = value;
                }

                return ReadsOrReports(folder.Write("trial.xlsx", bytes));
            },
            iter: Samples, threads: 1);
    }

    [Fact]
    public void Read_BracketsWithinBrackets_AreRefused()
    {
        using var folder = TrialFolder.Sound().Write("trial.toml", "title = " + new string('[', 200_000));

        Assert.Equal("TK201", folder.Read().Problems[0].Code);
    }

    private static byte[] Sound(string file) => System.Text.Encoding.UTF8.GetBytes(TrialFolder.SoundText(file));

    private static void Sample(Gen<(string File, byte[] Bytes)> contents)
    {
        using var folder = TrialFolder.Sound();
        contents.Sample(
            content =>
            {
                var reads = ReadsOrReports(folder.Write(content.File, content.Bytes));
                folder.Write(content.File, Sound(content.File));
                return reads;
            },
            iter: Samples, threads: 1);
    }

    private static bool ReadsOrReports(TrialFolder folder)
    {
        var reading = folder.Read();
        return reading.Trial is null == reading.Errors.Any() && reading.Problems.All(problem => !problem.ToString().Contains('\n', StringComparison.Ordinal));
    }
}
