using TrialKit.Comparison;

namespace TrialKit.Export;

/// <summary>What stands beside the verdicts: further tests of pairs, every procedure in blocks, equivalence, spots and counts.</summary>
internal static class ComparisonTables
{
    /// <summary>The tables, empty ones included.</summary>
    public static IEnumerable<ResultTable> Of(TrialAnalysis analysis) =>
        [Equivalence(analysis), PairTests(analysis), BlockTests(analysis), Pairwise(analysis), Letters(analysis), Spots(analysis), SpotPlans(analysis), Counts(analysis), CountContrasts(analysis)];

    private static ResultTable Equivalence(TrialAnalysis analysis) => ResultTable.Of(
        "equivalence",
        "one comparison against the margin set for its measure",
        from measure in analysis.Measures
        from contrast in measure.Contrasts
        where contrast.Equivalence is not null
        select (measure.Measure, Contrast: contrast, Test: contrast.Equivalence!),
        ("measure", "id of the measure", row => row.Measure.Id),
        ("unit", "unit of the margin", row => row.Measure.Unit.Symbol),
        ("treatment", "the treatment", row => row.Contrast.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Contrast.Baseline.Name),
        ("margin", "on either side of zero", row => row.Test.Margin),
        ("p_equivalence", "the larger of two one-sided p, adjusted like the comparison's own", row => row.Test.P.Value),
        ("low", "lower end of the interval of confidence 1 - 2 alpha, within the margin just where equivalence is shown", row => row.Test.Interval?.Low),
        ("high", "upper end of that interval", row => row.Test.Interval?.High),
        ("within_margin", "whether the difference was shown to be smaller than the margin", row => row.Contrast.IsWithinMargin),
        ("probability_above_margin", "that the true difference is above the margin, flat prior", row => row.Test.Above.Value),
        ("probability_below_margin", "that the true difference is below minus the margin, flat prior", row => row.Test.Below.Value));

    private static ResultTable PairTests(TrialAnalysis analysis) => ResultTable.Of(
        "pair-tests",
        "the tests of pairs on one measure",
        analysis.Measures.Where(measure => measure.Pairs is { Pairs.IsEmpty: false }).Select(measure => (measure.Measure, Pairs: measure.Pairs!)),
        ("measure", "id of the measure", row => row.Measure.Id),
        ("unit", "unit of the median and its interval", row => row.Measure.Unit.Symbol),
        ("pairs", "pairs with both strips", row => row.Pairs.Pairs.Length),
        ("median_shift", "Hodges-Lehmann estimate", row => row.Pairs.Median?.Value),
        ("median_low", "lower end of its interval", row => row.Pairs.Median?.Low),
        ("median_high", "upper end of its interval", row => row.Pairs.Median?.High),
        ("median_confidence", "confidence that interval truly has", row => row.Pairs.Median?.AchievedConfidence),
        ("p_sign_flips", "randomisation within pairs, two-sided", row => row.Pairs.SignFlips?.P.Value),
        ("draws", "random flips, where not all were counted", row => row.Pairs.SignFlips?.Draws),
        ("seed", "seed of the random flips", row => row.Pairs.SignFlips?.Seed is { } seed ? (double)seed : null),
        ("p_signed_rank", "zero differences left out before ranking", row => row.Pairs.SignedRank?.P.Value),
        ("p_signed_rank_pratt", "zero differences ranked, then left out", row => row.Pairs.SignedRankPratt?.P.Value),
        ("more", "pairs with more on the treatment", row => row.Pairs.Signs?.More),
        ("less", "pairs with less", row => row.Pairs.Signs?.Less),
        ("equal", "pairs without a difference", row => row.Pairs.Signs?.Equal),
        ("p_sign_test", "two-sided", row => row.Pairs.Signs?.Test?.P.Value),
        ("mixed_strips", "strips in the mixed model, where strips without the other of their pair are more than the pairs have", row => row.Pairs.AllStrips?.Strips),
        ("mixed_difference", "from that model", row => row.Pairs.AllStrips?.Estimate.Value),
        ("mixed_standard_error", "of that difference", row => row.Pairs.AllStrips?.Estimate.StandardError),
        ("mixed_df", "Satterthwaite's degrees of freedom", row => row.Pairs.AllStrips?.Estimate.DegreesOfFreedom),
        ("mixed_p", "two-sided", row => row.Pairs.AllStrips?.Estimate.PTwoSided.Value),
        ("mixed_pair_variance", "between pairs", row => row.Pairs.AllStrips?.PairVariance),
        ("mixed_residual_variance", "of strips within a pair", row => row.Pairs.AllStrips?.ResidualVariance));

    private static ResultTable BlockTests(TrialAnalysis analysis) => ResultTable.Of(
        "block-tests",
        "the tests of blocks on one measure",
        analysis.Measures.Where(measure => measure.Blocks is not null).Select(measure => (measure.Measure, Blocks: measure.Blocks!)),
        ("measure", "id of the measure", row => row.Measure.Id),
        ("p_f", "upper tail of F", row => row.Blocks.Anova.Treatments.P?.Value),
        ("p_randomization", "treatments rearranged within blocks", row => row.Blocks.Randomization?.P.Value),
        ("p_randomization_smallest", "the smallest this layout can give", row => row.Blocks.Randomization?.SmallestPossible.Value),
        ("draws", "random arrangements, where not all were counted", row => row.Blocks.Randomization?.Draws),
        ("seed", "seed of the random arrangements", row => row.Blocks.Randomization?.Seed is { } seed ? (double)seed : null),
        ("friedman_chi_square", "on ranks within blocks", row => row.Blocks.Friedman?.Statistic),
        ("p_friedman", "upper tail of chi-square", row => row.Blocks.Friedman?.P.Value),
        ("block_efficiency", "of blocks against none; above 1 they paid", row => row.Blocks.Efficiency),
        ("f_non_additivity", "Tukey's one degree of freedom", row => row.Blocks.NonAdditivity?.Statistic),
        ("p_non_additivity", "upper tail of that F", row => row.Blocks.NonAdditivity?.P.Value));

    private static ResultTable Pairwise(TrialAnalysis analysis) => ResultTable.Of(
        "pairwise",
        "two treatments of blocks on one measure by every procedure",
        analysis.Measures.Where(measure => measure.Blocks is not null).SelectMany(measure => measure.Blocks!.Pairwise.Select(pair => (measure.Measure, Pair: pair))),
        ("measure", "id of the measure", row => row.Measure.Id),
        ("unit", "unit of difference, error and LSD", row => row.Measure.Unit.Symbol),
        ("treatment", "the treatment", row => row.Pair.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Pair.Baseline.Name),
        ("difference", "treatment less baseline", row => row.Pair.Difference),
        ("standard_error", "of the difference", row => row.Pair.StandardError),
        ("lsd", "least significant difference at the trial's level", row => row.Pair.Lsd),
        ("p_unadjusted", "of this pair alone (LSD)", row => row.Pair.Unadjusted.Value),
        ("p_protected", "LSD after F", row => row.Pair.Protected.Value),
        ("p_tukey", "adjusted for all pairs", row => row.Pair.Tukey.Value),
        ("p_holm", "adjusted for all pairs, step-down", row => row.Pair.Holm.Value),
        ("p_dunnett", "adjusted for all comparisons with the control", row => row.Pair.Dunnett?.Value));

    private static ResultTable Letters(TrialAnalysis analysis) => ResultTable.Of(
        "letters",
        "letters of one treatment on one measure; sharing a letter means not shown to differ",
        analysis.Measures.Where(measure => measure.Blocks is not null).SelectMany(measure => measure.Blocks!.Letters.Select(letters => (measure.Measure, Letters: letters))),
        ("measure", "id of the measure", row => row.Measure.Id),
        ("treatment", "the treatment", row => row.Letters.Treatment.Name),
        ("lsd", "by LSD", row => row.Letters.Lsd),
        ("lsd_protected", "by LSD after F", row => row.Letters.Protected),
        ("tukey", "by Tukey's test", row => row.Letters.Tukey),
        ("holm", "by Holm's step-down", row => row.Letters.Holm));

    private static ResultTable Spots(TrialAnalysis analysis) => ResultTable.Of<SpotVariation>(
        "spot-variation",
        "how one measure varies between strips and between the spots of a strip",
        analysis.Spots,
        ("measure", "id of the measure", row => row.Measure.Id),
        ("unit", "unit, of which the variances are in the square", row => row.Measure.Unit.Symbol),
        ("strips", "strips that took part", row => row.Strips),
        ("spots_per_strip", "harmonic mean", row => row.SpotsPerStrip),
        ("spot_variance", "between spots of a strip", row => row.SpotVariance),
        ("spot_df", "its degrees of freedom", row => row.SpotDegrees),
        ("strip_variance", "between strips, beyond what spots make", row => row.StripVariance),
        ("strip_df", "degrees of freedom between strips", row => row.StripDegrees),
        ("strip_variance_was_negative", "whether its estimate was negative and set to 0", row => row.WasNegative),
        ("f_over_strips", "treatments against strips", row => row.OverStrips?.Statistic),
        ("p_over_strips", "upper tail of that F", row => row.OverStrips?.P.Value),
        ("f_over_spots_wrong", "treatments against spots: the wrong test, for teaching", row => row.OverSpots?.Statistic),
        ("p_over_spots_wrong", "upper tail of that F", row => row.OverSpots?.P.Value));

    private static ResultTable SpotPlans(TrialAnalysis analysis) => ResultTable.Of(
        "spot-plans",
        "what a trial of so many strips and spots would know",
        analysis.Spots.SelectMany(spots => spots.Plans.Select(plan => (spots.Measure, Plan: plan))),
        ("measure", "id of the measure", row => row.Measure.Id),
        ("unit", "unit of error and difference", row => row.Measure.Unit.Symbol),
        ("strips_per_treatment", "pairs or blocks", row => row.Plan.StripsPerTreatment),
        ("spots_per_strip", "spots in each strip", row => row.Plan.SpotsPerStrip),
        ("standard_error", "of a difference of two treatments", row => row.Plan.StandardError),
        ("detectable_80", "true difference shown with a chance of 80 %, at the level of the verdicts", row => row.Plan.Detectable));

    private static ResultTable Counts(TrialAnalysis analysis) => ResultTable.Of<CountComparison>(
        "counts",
        "the model of counts of one measure",
        analysis.Counts,
        ("measure", "id of the measure", row => row.Measure.Id),
        ("model", "the procedure", row => row.Method.Name),
        ("strips", "strips behind it", row => row.Strips),
        ("dispersion", "scatter against that of chance alone; 1 is chance", row => row.Dispersion),
        ("df", "degrees of freedom of the dispersion", row => row.DegreesOfFreedom),
        ("f", "any difference between treatments", row => row.Overall?.Statistic),
        ("p", "upper tail of F", row => row.Overall?.P.Value));

    private static ResultTable CountContrasts(TrialAnalysis analysis) => ResultTable.Of(
        "count-comparisons",
        "one treatment against another on counts",
        analysis.Counts.SelectMany(counts => counts.Contrasts.Select(contrast => (Counts: counts, Contrast: contrast))),
        ("measure", "id of the measure", row => row.Counts.Measure.Id),
        ("ratio_of", "odds of seeds, or plants per length of row", row => row.Counts.IsShare ? "odds" : "rate"),
        ("treatment", "the treatment", row => row.Contrast.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Contrast.Baseline.Name),
        ("ratio", "treatment by baseline", row => row.Contrast.Ratio),
        ("low", "lower end of its interval at the trial's level", row => row.Contrast.Low),
        ("high", "upper end", row => row.Contrast.High),
        ("t", "logarithm of the ratio over its error", row => row.Contrast.T),
        ("p", "two-sided, of this comparison alone", row => row.Contrast.P.Value),
        ("p_holm", "adjusted for all comparisons of the measure", row => row.Contrast.Holm.Value));
}
