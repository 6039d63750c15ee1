using System.Globalization;
using System.Text.RegularExpressions;
using TrialKit.Reporting.Sheets.Teaching;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary><c>docs/guide/teaching.md</c> speaks of the topics there are, with their minutes, and its class takes two hours.</summary>
public partial class TeachingGuideTests
{
    private const int TwoHours = 120;
    private static readonly string Page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "guide", "teaching.md"));

    [Fact]
    public void ListOfSheets_EachTopic_StandsThereOnceWithItsMinutes() => Assert.Equal(
        ExerciseTopics.All.Select(topic => (topic.Id, topic.Minutes)).Order(),
        ListedTopics().Matches(Page).Select(match => (match.Groups["id"].Value, Whole(match.Groups["minutes"]))).Order());

    [Fact]
    public void Class_ItsParts_FollowOneAnotherForTwoHours()
    {
        var parts = ClassParts().Matches(Page).Select(match => (From: (60 * Whole(match.Groups["hour"])) + Whole(match.Groups["minute"]), Takes: Whole(match.Groups["takes"]))).ToArray();

        Assert.NotEmpty(parts);
        var now = 0;
        foreach (var (from, takes) in parts)
        {
            Assert.Equal(now, from);
            now += takes;
        }

        Assert.Equal(TwoHours, now);
    }

    [Fact]
    public void ClassAndEvenings_Together_UseEverySheetOnce()
    {
        var plans = Page[Page.IndexOf("## A class of two hours", StringComparison.Ordinal)..Page.IndexOf("## After class", StringComparison.Ordinal)];
        var rows = plans.Split('\n').Where(line => line.StartsWith('|'));

        Assert.Equal(
            ExerciseTopics.All.Select(topic => topic.Id).Order(StringComparer.Ordinal),
            rows.SelectMany(row => InCode().Matches(row)).Select(match => match.Groups["code"].Value).Where(code => ExerciseTopics.Find(code) is not null).Order(StringComparer.Ordinal));
    }

    private static int Whole(Group group) => int.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\| `(?<id>[a-z0-9-]+)` \| (?<minutes>[0-9]+) \|", RegexOptions.Multiline, 1000)]
    private static partial Regex ListedTopics();

    [GeneratedRegex(@"^\| (?<hour>[0-9]):(?<minute>[0-9]{2}) \| (?<takes>[0-9]+) \|", RegexOptions.Multiline, 1000)]
    private static partial Regex ClassParts();

    [GeneratedRegex("`(?<code>[a-z0-9-]+)`", RegexOptions.None, 1000)]
    private static partial Regex InCode();
}
