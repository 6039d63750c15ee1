using CsCheck;
using TrialKit.Comparison;
using TrialKit.Tests.Numerics;
using TrialKit.Tests.Numerics.Pairs;

namespace TrialKit.Tests.Comparison;

/// <summary>Comparisons of pairs against <c>reference-data/pairs/paired.json</c> (R 4.2.2, exactRankTests), and their laws.</summary>
public class PairedStripsTests
{
    // Differences as fields give them: to the hundredth, not all alike.
    private static readonly Gen<double[]> Differences = Gen.Int[-2000, 2000].Select(hundredths => hundredths / 100.0).Array[4, 9].Where(d => d.Distinct().Count() > 2);

    [Theory]
    [InlineData(0.05, "t95", "hl_ci95_order_stats", "alpha05")]
    [InlineData(0.10, "t90", "hl_ci90_order_stats", "alpha10")]
    public void Compare_ReferencePairs_AgreesWithEveryProcedure(double alpha, string t, string median, string detectable)
    {
        foreach (var (name, d, values) in PairCases.All())
        {
            var comparison = ComparisonTrial.Compare(ComparisonTrial.Pairs(d, new double[d.Length], alpha));
            var (contrast, pairs) = (Assert.Single(comparison.Contrasts), comparison.Pairs!);
            var interval = values.GetProperty(t).GetProperty("ci");
            Close.Relative(values.Number(t, "mean"), contrast.Difference, Tolerances.ClosedForm, name);
            Close.Relative(values.Number(t, "se"), contrast.Estimate!.StandardError, Tolerances.ClosedForm, name);
            Close.Relative(values.Number(t, "t"), contrast.Estimate.T, Tolerances.ClosedForm, name);
            Close.Relative(values.Number(t, "p"), contrast.P!.Value.Value, Tolerances.ClosedForm, name);
            Close.Relative(interval[0].GetDouble(), contrast.Interval!.Value.Low, Tolerances.ClosedForm, name);
            Close.Relative(interval[1].GetDouble(), contrast.Interval.Value.High, Tolerances.ClosedForm, name);
            Close.Relative(values.Number("min_detectable_80", detectable), contrast.Detectable, Tolerances.ReferenceEffect, name);
            Close.Relative(values.Number("permutation_exact", "p_two"), pairs.SignFlips!.P.Value, Tolerances.ExactCount, name);
            Close.Relative(values.Number("wilcoxon_drop0", "p_two_doubled"), pairs.SignedRank!.P.Value, Tolerances.ExactCount, name);
            Close.Relative(values.Number("wilcoxon_pratt", "p_two_doubled"), pairs.SignedRankPratt!.P.Value, Tolerances.ExactCount, name);
            Close.Relative(values.Number("sign_test", "p_two"), pairs.Signs!.Test!.P.Value, Tolerances.ExactCount, name);
            Assert.Equal((values.Number("sign_test", "plus"), values.Number("sign_test", "minus"), values.Number("sign_test", "zero")), (pairs.Signs.More, pairs.Signs.Less, pairs.Signs.Equal));
            Close.Relative(values.Number("hl_all_walsh", "estimate"), pairs.Median!.Value, Tolerances.ClosedForm, name);
            Close.Relative(values.Number(median, "lo"), pairs.Median.Low, Tolerances.ClosedForm, name);
            Close.Relative(values.Number(median, "hi"), pairs.Median.High, Tolerances.ClosedForm, name);
            Close.Relative(values.Number(median, "conf_achieved"), pairs.Median.AchievedConfidence, Tolerances.ExactCount, name);
            Assert.True(pairs.Median.ReachesLevel, name);
        }
    }

    [Fact]
    public void Compare_MarginSet_AgreesWithTheTwoOneSidedTests()
    {
        foreach (var (name, d, values) in PairCases.All())
        {
            var contrast = ComparisonTrial.Compare(ComparisonTrial.Pairs(d, new double[d.Length], margin: values.Number("tost", "delta"))).Contrasts[0];
            Close.Relative(values.Number("tost", "p"), contrast.Equivalence!.P.Value, Tolerances.ClosedForm, name);
            Assert.Equal(Verdict.Shown, contrast.Verdict);
            Close.Relative(
                values.Number("prob_exceeds_breakeven", "p"),
                contrast.Estimate!.ProbabilityAbove(values.Number("prob_exceeds_breakeven", "breakeven")).Value,
                Tolerances.ClosedForm,
                name);
        }
    }

    [Fact]
    public void Verdict_SmallDifferencesWithAndWithoutAMargin_AreEquivalentOnlyWithOne()
    {
        double[] treated = [10.1, 12.0, 9.9, 11.1, 10.2, 11.9];
        double[] control = [10.0, 12.1, 10.0, 11.0, 10.1, 12.0];

        Assert.Equal(Verdict.NotShown, ComparisonTrial.Compare(ComparisonTrial.Pairs(treated, control)).Contrasts[0].Verdict);
        Assert.Equal(Verdict.Equivalent, ComparisonTrial.Compare(ComparisonTrial.Pairs(treated, control, margin: 1)).Contrasts[0].Verdict);
        Assert.Equal(Verdict.NotShown, ComparisonTrial.Compare(ComparisonTrial.Pairs(treated, control, margin: 0.01)).Contrasts[0].Verdict);
    }

    [Fact]
    public void Verdict_ShownAndWithinTheMargin_IsShown()
    {
        var contrast = ComparisonTrial.Compare(ComparisonTrial.Pairs([10.1, 12.2, 10.1, 11.2], [10, 12.1, 9.9, 11], margin: 1)).Contrasts[0];

        Assert.Equal(Verdict.Shown, contrast.Verdict);
        Assert.True(contrast.IsWithinMargin);
    }

    [Theory]
    [InlineData("n2", new[] { 3.0, 5 })]
    [InlineData("n3", new[] { 3.0, 5, 4 })]
    public void Compare_TwoOrThreePairs_AgreesWithTheReferenceAndWarns(string name, double[] differences)
    {
        var expected = ReferenceData.Json("blocks/extra.json").GetProperty("edge_cases").GetProperty("values").GetProperty(name);
        var comparison = ComparisonTrial.Compare(ComparisonTrial.Pairs(differences, new double[differences.Length], alpha: 0.05));
        var contrast = comparison.Contrasts[0];
        Close.Relative(expected.GetProperty("t").GetDouble(), contrast.Estimate!.T, Tolerances.ClosedForm, name);
        Close.Relative(expected.GetProperty("p").GetDouble(), contrast.P!.Value.Value, Tolerances.ClosedForm, name);
        Close.Relative(expected.GetProperty("ci95")[0].GetDouble(), contrast.Interval!.Value.Low, Tolerances.ClosedForm, name);
        Close.Relative(expected.GetProperty("ci95")[1].GetDouble(), contrast.Interval.Value.High, Tolerances.ClosedForm, name);
        Assert.Contains(comparison.Findings, finding => finding.Id == "few-pairs");
        Assert.Contains(comparison.Findings, finding => finding.Id == "shape-not-checked");
        Assert.Contains(comparison.Findings, finding => finding.Id == "exact-p-limit");
    }

    [Fact]
    public void Compare_OneWildPair_IsNamedAndKept()
    {
        var comparison = ComparisonTrial.Compare(ComparisonTrial.Pairs([1, 1.1, 0.9, 1.05, 0.95, 1.02, 9], [0, 0, 0, 0, 0, 0, 0]));

        Assert.Contains("pair B07", Assert.Single(comparison.Findings, finding => finding.Id == "odd-one-out").Message, StringComparison.Ordinal);
        Assert.Contains(comparison.Findings, finding => finding.Id == "not-bell-shaped");
        Assert.Equal(7, comparison.Pairs!.Pairs.Length);
    }

    [Fact]
    public void Compare_MissingStrips_DropTheirPairsAndNameThem()
    {
        var data = ReferenceData.Json("blocks/extra.json").GetProperty("missing_one_strip_of_pair").GetProperty("data").GetProperty("y").EnumerateArray().Select(value => value.ValueKind == System.Text.Json.JsonValueKind.Null ? double.NaN : value.GetDouble()).ToArray();
        var comparison = ComparisonTrial.Compare(ComparisonTrial.Pairs(data[6..], data[..6]));

        Assert.Equal(5, comparison.Pairs!.Pairs.Length);
        Assert.Contains("B06", Assert.Single(comparison.Findings, finding => finding.Id == "pair-incomplete").Message, StringComparison.Ordinal);
        Close.Relative(3.2, comparison.Contrasts[0].Difference, Tolerances.ClosedForm, "mean of 3, 4, 3, 1, 5");
    }

    [Fact]
    public void Compare_SwappedTreatments_FlipsSignsAndNothingElse() => Differences.Sample(
        d =>
        {
            var plain = ComparisonTrial.Compare(ComparisonTrial.Pairs(d, new double[d.Length], margin: 3));
            var swapped = ComparisonTrial.Compare(ComparisonTrial.Pairs(new double[d.Length], d, margin: 3));
            var (a, b) = (plain.Contrasts[0], swapped.Contrasts[0]);
            Assert.Equal(a.Difference, -b.Difference);
            Assert.Equal(a.P, b.P);
            Assert.Equal(a.Interval!.Value.Low, -b.Interval!.Value.High);
            Assert.Equal(a.Verdict, b.Verdict);
            Close.Absolute(a.Equivalence!.P.Value, b.Equivalence!.P.Value, Tolerances.FewRoundings, "equivalence");
            Close.Absolute(a.Equivalence.Above.Value, b.Equivalence.Below.Value, Tolerances.FewRoundings, "beyond the margin");
            Assert.Equal(plain.Pairs!.SignFlips!.P, swapped.Pairs!.SignFlips!.P);
            Assert.Equal(plain.Pairs.SignedRank!.P, swapped.Pairs.SignedRank!.P);
            Assert.Equal((plain.Pairs.Signs!.More, plain.Pairs.Signs.Less), (swapped.Pairs.Signs!.Less, swapped.Pairs.Signs.More));
            Close.Absolute(plain.Pairs.Median!.Value, -swapped.Pairs.Median!.Value, Tolerances.FewRoundings, "median");
            Close.Absolute(plain.Pairs.Median.Low, -swapped.Pairs.Median.High, Tolerances.FewRoundings, "median interval");
        },
        iter: 200);

    [Fact]
    public void Compare_ShiftedAndRescaled_MovesOnlyWhatItShould() => Gen.Select(Differences, Gen.Double[-100, 100], Gen.Double[0.1, 50]).Sample(
        (d, shift, scale) =>
        {
            var plain = ComparisonTrial.Compare(ComparisonTrial.Pairs(d, new double[d.Length]));
            var moved = ComparisonTrial.Compare(ComparisonTrial.Pairs([.. d.Select(value => scale * (value + shift))], [.. d.Select(_ => scale * shift)]));
            Close.Absolute(scale * plain.Contrasts[0].Difference, moved.Contrasts[0].Difference, Tolerances.ClosedForm * scale * 100, "difference");
            Close.Absolute(plain.Contrasts[0].P!.Value.Value, moved.Contrasts[0].P!.Value.Value, Tolerances.ClosedForm, "p");
            Close.Absolute(scale * plain.Pairs!.Median!.Value, moved.Pairs!.Median!.Value, Tolerances.ClosedForm * scale * 100, "median");
            Close.Absolute(plain.Pairs.SignFlips!.P.Value, moved.Pairs.SignFlips!.P.Value, Tolerances.ExactCount, "flips");
        },
        iter: 200);

    [Fact]
    public void Compare_PairsInAnotherOrder_ChangesNothing() => Gen.Select(Differences, Gen.Int[1, 1000]).Sample(
        (d, seed) =>
        {
            var shuffled = d.ToArray();
            new Random(seed).Shuffle(shuffled);
            var (plain, other) = (ComparisonTrial.Compare(ComparisonTrial.Pairs(d, new double[d.Length])), ComparisonTrial.Compare(ComparisonTrial.Pairs(shuffled, new double[d.Length])));
            Close.Absolute(plain.Contrasts[0].P!.Value.Value, other.Contrasts[0].P!.Value.Value, Tolerances.FewRoundings, "p");
            Assert.Equal(plain.Pairs!.SignFlips!.P, other.Pairs!.SignFlips!.P);
            Assert.Equal(plain.Pairs.Median!.Value, other.Pairs.Median!.Value);
        },
        iter: 100);

    [Theory]
    [InlineData("one_missing", 1)]
    [InlineData("two_missing", 2)]
    public void AllStrips_StripsMissing_AgreesWithTheReferenceAndSaysBothCounts(string missing, int lost)
    {
        var data = ReferenceData.Json("blocks/extra.json").GetProperty("missing_one_strip_of_pair");
        var values = data.GetProperty("values").GetProperty(missing);
        double[] y = [.. data.GetProperty("data").GetProperty("y").EnumerateArray().Select(value => value.ValueKind == System.Text.Json.JsonValueKind.Number ? value.GetDouble() : double.NaN)];
        if (lost == 2)
        {
            y[2] = double.NaN;
        }

        var comparison = ComparisonTrial.Compare(ComparisonTrial.Pairs(y[6..], y[..6]));
        var all = comparison.Pairs!.AllStrips!;

        Close.Relative(values.GetProperty("lmer_est").GetDouble(), all.Estimate.Value, Tolerances.Reml, missing);
        Close.Relative(values.GetProperty("lmer_se").GetDouble(), all.Estimate.StandardError, Tolerances.Reml, missing);
        Close.Relative(values.GetProperty("lmer_df").GetDouble(), all.Estimate.DegreesOfFreedom, Tolerances.DifferencedReml, missing);
        Close.Relative(values.GetProperty("lmer_p").GetDouble(), all.Estimate.PTwoSided.Value, Tolerances.DifferencedReml, missing);
        Close.Relative(values.GetProperty("var_pair").GetDouble(), all.PairVariance, Tolerances.DifferencedReml, missing);
        Close.Relative(values.GetProperty("complete_pairs_est").GetDouble(), comparison.Contrasts[0].Difference, Tolerances.ClosedForm, missing);
        Close.Relative(values.GetProperty("complete_pairs_p").GetDouble(), comparison.Contrasts[0].P!.Value.Value, Tolerances.ClosedForm, missing);
        var message = comparison.Findings.Single(finding => finding.Id == "pair-incomplete").Message;
        Assert.Contains(System.FormattableString.Invariant($"rests on {6 - lost} whole pairs"), message, StringComparison.Ordinal);
        Assert.Contains(System.FormattableString.Invariant($"all {12 - lost} strips"), message, StringComparison.Ordinal);
    }

    [Fact]
    public void AllStrips_WholePairs_IsLeftOut() => Assert.Null(ComparisonTrial.Compare(ComparisonTrial.Pairs([1, 3, 2, 5], [0, 1, 1, 2])).Pairs!.AllStrips);

    [Fact]
    public void Compare_ZeroDifferences_LeaveTheSmallestPToTheOthers()
    {
        var comparison = ComparisonTrial.Compare(ComparisonTrial.Pairs([2, 2, 2, 2, 3, 4, 5, 6], [2, 2, 2, 2, 2, 2, 2, 2]));
        var exact = comparison.Pairs!.SignFlips!;

        Assert.Equal(0.125, exact.SmallestPossible.Value);
        Assert.Equal(0.125, exact.P.Value);
        Assert.Contains("with 8 pairs, 4 of them without a difference,", comparison.Findings.Single(finding => finding.Id == "exact-p-limit").Message, StringComparison.Ordinal);
        Assert.Equal(1, ComparisonTrial.Compare(ComparisonTrial.Pairs([5, 5, 5], [5, 5, 5])).Pairs!.SignFlips!.SmallestPossible.Value);
    }

    [Fact]
    public void Compare_GreatLevelAndSmallDifferences_IsTested()
    {
        double[] differences = [0.5, 0.2, 0.9, 0.4, 0.1, 0.7];
        var comparison = ComparisonTrial.Compare(ComparisonTrial.Pairs([.. differences.Select(d => 1e12 + d)], [.. differences.Select(_ => 1e12)]));

        Assert.DoesNotContain(comparison.Findings, finding => finding.Id == "no-spread");
        Close.Relative(differences.Average(), comparison.Contrasts[0].Estimate!.Value, Tolerances.RoundedAtALevel, "1e12 is known to a ten-thousandth");
    }

    [Fact]
    public void Compare_OnePair_MakesNoTest()
    {
        var pairs = ComparisonTrial.Compare(ComparisonTrial.Pairs([3], [1])).Pairs!;

        Assert.Null(pairs.SignFlips);
        Assert.Null(pairs.Signs);
        Assert.Null(pairs.SignedRank);
        Assert.Null(pairs.Median);
    }

    [Fact]
    public void Compare_OneDifferenceForAll_SaysWhichTestsWereMade()
    {
        var comparison = ComparisonTrial.Compare(ComparisonTrial.Pairs([10.5, 12.5, 11.5, 9.5], [10, 12, 11, 9]));

        Assert.NotNull(comparison.Pairs!.SignFlips);
        Assert.Contains("No t test was made", comparison.Findings.Single(finding => finding.Id == "no-spread").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Equivalence_AnyPairs_IsShownJustWhereItsIntervalLiesWithinTheMargin() => Differences.Sample(
        d =>
        {
            var contrast = ComparisonTrial.Compare(ComparisonTrial.Pairs(d, new double[d.Length], margin: 6)).Contrasts[0];
            var interval = contrast.Equivalence!.Interval!.Value;
            Assert.Equal(contrast.IsWithinMargin, interval.Low > -6 && interval.High < 6);
            Assert.Equal(0.8, interval.Level.Confidence, Tolerances.ClosedForm);
        },
        iter: 100);
}
