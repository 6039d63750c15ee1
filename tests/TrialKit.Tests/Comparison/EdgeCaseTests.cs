using TrialKit.Comparison;
using TrialKit.Export;

namespace TrialKit.Tests.Comparison;

/// <summary>Trials at the edge of what can be analysed: each says what is the matter, and no output holds what is no number.</summary>
public class EdgeCaseTests
{
    public static TheoryData<string, double[], double[], string?> PairCases => new()
    {
        { "one pair", [10], [9], "one-pair" },
        { "two pairs", [10, 12], [9, 10], "few-pairs" },
        { "three pairs", [10, 12, 11], [9, 10, 11.5], "few-pairs" },
        { "differences all equal", [10.1, 12.1, 11.1, 9.1], [10, 12, 11, 9], "no-spread" },
        { "values all equal", [10, 10, 10, 10], [10, 10, 10, 10], "no-spread" },
        { "no whole pair", [10, double.NaN], [double.NaN, 9], "no-pairs" },
        { "a strip missing", [10, 12, 11, double.NaN], [9, 10, 11.5, 8], "pair-incomplete" },
        { "ties everywhere", [1, 1, 1, 2, 2, 2, 1], [0, 0, 1, 1, 2, 1, 2], null },
        { "tiny values", [1e-12, 3e-12, 2e-12, 5e-12, 4e-12, 1e-12], [2e-12, 1e-12, 1e-12, 2e-12, 3e-12, 3e-12], null },
        { "huge values", [1e12, 3e12, 2e12, 5e12, 4e12, 1e12], [2e12, 1e12, 1e12, 2e12, 3e12, 3e12], null },
        { "huge level, small differences", [1e12, 1e12 + 3, 1e12 + 2, 1e12 + 5, 1e12 + 1, 1e12 + 2], [1e12 + 1, 1e12 + 1, 1e12, 1e12, 1e12 + 2, 1e12], null },
        { "nearly one difference", [5 + 1e-9, 5 + 2e-9, 5, 5 + 3e-9, 5 + 1e-9, 5 + 5e-9], [0, 0, 0, 0, 0, 0], null },
        { "zeros and one difference", [0, 0, 0, 0, 0, 3], [0, 0, 0, 0, 0, 0], null },
    };

    public static TheoryData<string, double[], int[], int[], string?> BlockCases => new()
    {
        { "values all equal", [5, 5, 5, 5, 5, 5, 5, 5, 5], [0, 0, 0, 1, 1, 1, 2, 2, 2], [0, 1, 2, 0, 1, 2, 0, 1, 2], "no-variation" },
        { "blocks and treatments explain all", [1, 2, 3, 2, 3, 4, 4, 5, 6], [0, 0, 0, 1, 1, 1, 2, 2, 2], [0, 1, 2, 0, 1, 2, 0, 1, 2], "no-spread" },
        { "one block", [1, 2, 3], [0, 0, 0], [0, 1, 2], "no-blocks" },
        { "two blocks", [1, 2, 3, 2, 3.5, 4], [0, 0, 0, 1, 1, 1], [0, 1, 2, 0, 1, 2], "few-blocks" },
        { "a treatment with one strip", [1, 2, 3, 2, 3.5, 3, 4], [0, 0, 0, 1, 1, 2, 2], [0, 1, 2, 0, 1, 0, 1], "treatment-one-strip" },
        { "two treatments missing in one block", [1, 2, 3, 4, 2, 3.5, 4, 3, 3, 3.2, 4], [0, 0, 0, 0, 1, 1, 2, 2, 2, 2, 1], [0, 1, 2, 3, 0, 1, 0, 1, 2, 3, 2], "strips-missing" },
        { "a block with one strip", [1, 2, 3, 2, 3.5, 4, 9], [0, 0, 0, 1, 1, 1, 2], [0, 1, 2, 0, 1, 2, 0], null },
        { "a treatment apart", [1, 2, 2, 3.5, 4, 4.4], [0, 0, 1, 1, 2, 2], [0, 1, 0, 1, 2, 3], "treatment-not-comparable" },
        { "ties everywhere", [1, 1, 2, 1, 2, 2, 2, 1, 1, 1, 2, 1], [0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3, 3], [0, 1, 2, 0, 1, 2, 0, 1, 2, 0, 1, 2], null },
        { "residuals alike around the median", [1, 1, 1, -1, -1, -1, 1, 1, -1, -1, 1, -1], [0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3, 3], [0, 1, 2, 0, 1, 2, 0, 1, 2, 0, 1, 2], null },
        { "tiny values", [1e-12, 2e-12, 4e-12, 2e-12, 5e-12, 3e-12, 2e-12, 1e-12, 6e-12], [0, 0, 0, 1, 1, 1, 2, 2, 2], [0, 1, 2, 0, 1, 2, 0, 1, 2], null },
        { "huge values", [1e12, 2e12, 4e12, 2e12, 5e12, 3e12, 2e12, 1e12, 6e12], [0, 0, 0, 1, 1, 1, 2, 2, 2], [0, 1, 2, 0, 1, 2, 0, 1, 2], null },
        { "two treatments", [1, 2, 4, 2, 5, 3, 2, 1, 6, 4, 3, 3], [0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5], [0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1], null },
    };

    [Theory]
    [MemberData(nameof(PairCases))]
    public void Of_PairsAtTheEdge_SaysSoAndWritesNumbersOnly(string name, double[] treated, double[] control, string? finding)
    {
        foreach (double? margin in new double?[] { null, 0.5 })
        {
            var analysis = TrialAnalysis.Of(ComparisonTrial.Pairs(treated, control, margin: margin));

            FiniteTables.Check(analysis, name);
            Assert.True(finding is null || analysis.AllFindings.Any(found => found.Id == finding), $"{name}: {finding} was not said");
            Same(analysis, TrialAnalysis.Of(ComparisonTrial.Pairs(treated, control, margin: margin)));
        }
    }

    [Theory]
    [MemberData(nameof(BlockCases))]
    public void Of_BlocksAtTheEdge_SaysSoAndWritesNumbersOnly(string name, double[] values, int[] block, int[] treatment, string? finding)
    {
        string[] names = [.. Enumerable.Range(0, treatment.Max() + 1).Select(index => $"T{index}")];
        foreach (int? control in new int?[] { null, 0 })
        {
            var analysis = TrialAnalysis.Of(ComparisonTrial.Blocks(values, block, treatment, names, control, margin: 0.5));

            FiniteTables.Check(analysis, name);
            Assert.True(finding is null || analysis.AllFindings.Any(found => found.Id == finding), $"{name}: {finding} was not said");
            Assert.All(analysis.Measures[0].Contrasts.Where(contrast => finding is "no-variation" or "no-spread"), contrast => Assert.Equal(Verdict.NotJudged, contrast.Verdict));
            Same(analysis, TrialAnalysis.Of(ComparisonTrial.Blocks(values, block, treatment, names, control, margin: 0.5)));
        }
    }

    [Theory]
    [InlineData("drag-chains")]
    [InlineData("starter-placement")]
    [InlineData("closing-wheels")]
    public void Of_Examples_WriteNumbersOnly(string name) => FiniteTables.Check(TrialAnalysisTests.Example(name), name);

    private static void Same(TrialAnalysis first, TrialAnalysis second)
    {
        Assert.Equal(Written(first), Written(second));

        static byte[] Written(TrialAnalysis analysis)
        {
            using var stream = new MemoryStream();
            JsonResult.Write(analysis, [], stream);
            return stream.ToArray();
        }
    }
}
