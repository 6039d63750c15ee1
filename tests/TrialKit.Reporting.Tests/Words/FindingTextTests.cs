using TrialKit.Reporting.Words;
using TrialKit.Results;

namespace TrialKit.Reporting.Tests.Words;

public class FindingTextTests
{
    [Fact]
    public void Of_MessagesThatNameOtherThings_SaysEach()
    {
        Finding[] findings =
        [
            new("block-incomplete", FindingWeight.Caution, "Block 2 has no strip of Notched disc pair in the analysis.", "2"),
            new("block-incomplete", FindingWeight.Caution, "Block 5 has no strip of Cast-iron pair in the analysis.", "5"),
        ];

        var text = FindingText.Of(findings, []);

        Assert.Contains("Block 5 has no strip of Cast-iron pair", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Likewise", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_MessagesThatDifferInFigures_SaysOneAndNamesTheOthers()
    {
        Finding[] findings =
        [
            new("late", FindingWeight.Note, "Of 120 plants 3.5 % were late.", "S01"),
            new("late", FindingWeight.Note, "Of 98 plants 12 % were late.", "S02"),
            new("late", FindingWeight.Note, "Of 101 plants 1 % were late.", "S03"),
        ];

        Assert.Equal("S01: Of 120 plants 3.5 % were late. Likewise, with figures of their own: S02; S03.", FindingText.Of(findings, []));
    }
}
