using System.Text.RegularExpressions;
using TrialKit.Ingest;

namespace TrialKit.Tests.Examples;

/// <summary>The snippets of <c>docs/guide/file-format.md</c>, put together, are a trial.</summary>
public sealed partial class FileFormatGuideTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("trialkit-guide-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Read_SnippetsOfTheGuide_AreATrialWithoutProblems()
    {
        WriteSnippets();
        var reading = TrialReader.Read(folder);
        Assert.Empty(reading.Problems);
        Assert.Equal(4, reading.Trial!.Strips.Length);
        Assert.Equal(2, reading.Trial.Emergence.Single().Visits.Length);
        Assert.Equal("10-34-0", reading.Trial.Treatments[1].Products.Single().Analysis.ToString());
    }

    [Theory]
    [InlineData("crop", "[crop]")]
    [InlineData("units", "[units]")]
    public void Read_SectionInThePlaceOfAKey_AddsNoProblem(string key, string section)
    {
        WriteSnippets();
        var path = Path.Combine(folder, "trial.toml");
        var settings = File.ReadAllLines(path).Where(line => !line.StartsWith($"{key} =", StringComparison.Ordinal));
        File.WriteAllLines(path, [.. settings, Blocks("toml").Single(block => block.StartsWith(section, StringComparison.Ordinal))]);
        Assert.Empty(TrialReader.Read(folder).Problems);
    }

    /// <summary>Writes each table's snippet; the weather's, which shows one day, is continued with the days of an example.</summary>
    private void WriteSnippets()
    {
        File.WriteAllText(Path.Combine(folder, "trial.toml"), Blocks("toml").First());
        var tables = TableSnippet().Matches(Guide()).ToDictionary(match => match.Groups["file"].Value, match => match.Groups["text"].Value);
        Assert.Equal(["strips.csv", "spots.csv", "stand-counts.csv", "emergence.csv", "plants.csv", "harvest.csv", "measures.csv", "weather.csv"], tables.Keys);
        foreach (var (file, text) in tables)
        {
            File.WriteAllText(Path.Combine(folder, file), text);
        }

        var weather = Path.Combine(ExampleTrialWriter.FolderOf(DragChains.Plan), "weather.csv");
        Assert.Contains(tables["weather.csv"].Split('\n')[0], File.ReadLines(weather));
        Assert.Contains(tables["weather.csv"].Split('\n')[1], File.ReadLines(weather));
        File.Copy(weather, Path.Combine(folder, "weather.csv"), overwrite: true);
    }

    private static IEnumerable<string> Blocks(string language) =>
        Block().Matches(Guide()).Where(match => match.Groups["language"].Value == language).Select(match => match.Groups["text"].Value);

    private static string Guide() => File.ReadAllText(Path.Combine(ReferenceData.Repository, "docs", "guide", "file-format.md"));

    [GeneratedRegex(@"^```(?<language>\w*)\n(?<text>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Block();

    [GeneratedRegex(@"^## `(?<file>[a-z-]+\.csv)`[^\n]*\n\n```\n(?<text>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex TableSnippet();
}
