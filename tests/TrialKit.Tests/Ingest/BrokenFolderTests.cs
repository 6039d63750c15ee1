namespace TrialKit.Tests.Ingest;

/// <summary>One folder for each fault: tests/reference-data/broken/CASE varies _base and says in expected.txt, line by line, what is reported.</summary>
public class BrokenFolderTests
{
    public static TheoryData<string> Cases =>
        [.. Directory.GetDirectories(Path.Combine(ReferenceData.Root, "broken"))
            .Select(path => Path.GetFileName(path))
            .Where(name => name != "_base")
            .Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Read_BrokenFolder_ReportsExactlyWhatIsExpected(string name)
    {
        using var folder = TrialFolder.OfCase(name);
        var expected = File.ReadAllText(Path.Combine(ReferenceData.Root, "broken", name, "expected.txt"));

        var reading = folder.Read();

        Assert.NotEmpty(reading.Problems);
        Assert.Equal(expected, string.Concat(reading.Problems.Select(problem => problem + "\n")));
        Assert.Equal(reading.Errors.Any(), reading.Trial is null);
    }

    [Fact]
    public void Cases_AreAtLeastSixty() => Assert.True(Cases.Count >= 60, $"{Cases.Count} cases");
}
