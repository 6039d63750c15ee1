using System.Text.RegularExpressions;

namespace TrialKit.Tests.Ingest;

/// <summary>docs/guide/problems.md explains every code that the source can report, and no other.</summary>
public partial class ProblemCodesTests
{
    private static string Page => File.ReadAllText(Path.Combine(ReferenceData.Repository, "docs", "guide", "problems.md"));

    private static IEnumerable<(string Code, string File)> InSource() =>
        Directory.GetFiles(Path.Combine(ReferenceData.Repository, "src", "TrialKit", "Ingest", "Messages"), "*.cs")
            .SelectMany(file => CodeInSource().Matches(File.ReadAllText(file)).Select(match => (match.Groups["code"].Value, Path.GetFileName(file))));

    private static IEnumerable<string> InPage() => CodeInPage().Matches(Page).Select(match => match.Groups["code"].Value);

    [Fact]
    public void Source_CodesAreUnique()
    {
        var twice = InSource().GroupBy(code => code.Code, StringComparer.Ordinal).Where(group => group.Count() > 1).Select(group => group.Key);

        Assert.Empty(twice);
    }

    [Fact]
    public void Source_CodesStandInTheFileOfTheirGroup()
    {
        var groups = new Dictionary<char, string>
        {
            ['1'] = "TableProblems.cs",
            ['2'] = "TomlProblems.cs",
            ['3'] = "TrialProblems.cs",
            ['4'] = "WeatherProblems.cs",
            ['5'] = "FileProblems.cs",
            ['6'] = "SeasonProblems.cs",
        };

        Assert.All(InSource(), code => Assert.Equal(groups[code.Code[2]], code.File));
    }

    [Fact]
    public void Page_ExplainsEachCodeOnceAndNoOther()
    {
        Assert.Equal(InSource().Select(code => code.Code).Order(StringComparer.Ordinal), InPage().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Page_SaysWhichCodesAreWarnings()
    {
        var reported = Directory.GetFiles(Path.Combine(ReferenceData.Root, "broken"), "expected.txt", SearchOption.AllDirectories)
            .SelectMany(file => File.ReadAllLines(file))
            .Select(line => Reported().Match(line))
            .Select(match => (Code: match.Groups["code"].Value, IsWarning: match.Groups["severity"].Value == "warning"))
            .Distinct();

        Assert.All(reported, problem => Assert.Contains($"| {problem.Code} | {(problem.IsWarning ? "warning" : "error")} |", Page, StringComparison.Ordinal));
    }

    [GeneratedRegex("\"(?<code>TK\\d{3})\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CodeInSource();

    [GeneratedRegex("^\\| (?<code>TK\\d{3}) \\|", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CodeInPage();

    [GeneratedRegex("(?<severity>error|warning) (?<code>TK\\d{3}):", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Reported();
}
