using CsCheck;

namespace TrialKit.Tests.Ingest;

/// <summary>Whatever the files hold, the reader reports; it never throws.</summary>
public class RandomInputTests
{
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
    public void Read_RandomBytes_NeverThrows() => Gen.Select(File, Gen.Byte.Array[0, 300]).Sample(
        (file, bytes) => ReadsOrReports(file, bytes),
        iter: 300, threads: 1);

    [Fact]
    public void Read_TruncatedFile_NeverThrows() => Gen.Select(File, Gen.Double.Unit).Sample(
        (file, share) =>
        {
            var bytes = Sound(file);
            return ReadsOrReports(file, bytes[..(int)(share * bytes.Length)]);
        },
        iter: 300, threads: 1);

    [Fact]
    public void Read_FileWithBytesChanged_NeverThrows() => Gen.Select(File, Gen.Select(Gen.Double.Unit, Gen.Byte).Array[1, 5]).Sample(
        (file, changes) =>
        {
            var bytes = Sound(file);
            foreach (var (place, value) in changes)
            {
                bytes[Math.Min(bytes.Length - 1, (int)(place * bytes.Length))] = value;
            }

            return ReadsOrReports(file, bytes);
        },
        iter: 500, threads: 1);

    [Fact]
    public void Read_FileOfTelltaleCharacters_NeverThrows() => Gen.Select(File, Telltale.Array[0, 60]).Sample(
        (file, parts) => ReadsOrReports(file, System.Text.Encoding.UTF8.GetBytes(string.Concat(parts))),
        iter: 500, threads: 1);

    [Fact]
    public void Read_WorkbookWithBytesChanged_NeverThrows()
    {
        var sound = new SheetWriter().AddCsv("harvest", TrialFolder.SoundText("harvest.csv")).ToBytes();
        Gen.Select(Gen.Int[0, sound.Length - 1], Gen.Byte).Array[1, 4].Sample(
            changes =>
            {
                var bytes = sound.ToArray();
                foreach (var (place, value) in changes)
                {
                    bytes[place] = value;
                }

                using var folder = TrialFolder.Sound().Remove("harvest.csv").Write("trial.xlsx", bytes);
                var reading = folder.Read();
                return reading.Trial is null == reading.Errors.Any();
            },
            iter: 200, threads: 1);
    }

    [Fact]
    public void Read_BracketsWithinBrackets_AreRefused()
    {
        using var folder = TrialFolder.Sound().Write("trial.toml", "title = " + new string('[', 200_000));

        Assert.Equal("TK201", folder.Read().Problems[0].Code);
    }

    private static byte[] Sound(string file) => System.Text.Encoding.UTF8.GetBytes(TrialFolder.SoundText(file));

    private static bool ReadsOrReports(string file, byte[] bytes)
    {
        using var folder = TrialFolder.Sound().Write(file, bytes);
        var reading = folder.Read();
        return reading.Trial is null == reading.Errors.Any() && reading.Problems.All(problem => !problem.ToString().Contains('\n', StringComparison.Ordinal));
    }
}
