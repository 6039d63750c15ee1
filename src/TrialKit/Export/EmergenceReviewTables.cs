using TrialKit.Emergence;
using TrialKit.Results;
using TrialKit.Stand;

namespace TrialKit.Export;

/// <summary>Tables of the reviewer's part: curves, times, tests, evenness, odd spacings, stages, and what is published elsewhere.</summary>
internal static class EmergenceReviewTables
{
    public static IEnumerable<ResultTable> Of(TrialAnalysis analysis) =>
    [
        Models(analysis),
        Times(analysis),
        StripTimes(analysis),
        Scores(analysis),
        Ratios(analysis),
        Undefined(analysis),
        Evenness(analysis),
        Lags(analysis),
        Stages(analysis),
        OddSpacings(analysis),
        Limits(analysis),
        Response(analysis),
        Published(analysis),
    ];

    private static ResultTable Models(TrialAnalysis analysis) => ResultTable.Of(
        "emergence-models",
        "one shape of curve tried for all strips",
        analysis.Emergence is { } review ? review.Curve.Candidates.Select(candidate => (Candidate: candidate, review.Curve)) : [],
        ("model", "the shape", row => row.Candidate.Model),
        ("aic", "Akaike's criterion, summed over strips that can tell shapes apart", row => row.Candidate.Aic),
        ("strips", "those strips", row => row.Curve.Strips),
        ("used", "whether it is the shape used", row => row.Candidate.Model == row.Curve.Model),
        ("reason", "why that one", row => row.Curve.Reason));

    private static ResultTable Times(TrialAnalysis analysis) => ResultTable.Of(
        "emergence-times",
        "one time of one treatment",
        analysis.Emergence is { } review
            ? review.Treatments.SelectMany(treatment => treatment.Times.Select(time => (treatment.Treatment, Time: time, ByStrips: time.ByStrips?.IntervalAt(analysis.Trial.Design.Level))))
            : [],
        ("treatment", "the treatment", row => row.Treatment.Name),
        ("time", "id of the time; sown: of the seeds sown, else of the plants that come up", row => row.Time.Id),
        ("strips", "strips that have it", row => row.Time.Strips),
        ("mean_days", "mean over strips", row => row.Time.Mean),
        ("low_days", "lower end of its interval, by the spread between strips", row => row.ByStrips?.Low),
        ("high_days", "upper end", row => row.ByStrips?.High),
        ("pooled_days", "from one curve fitted to all seeds of the treatment", row => row.Time.Pooled),
        ("pooled_low_days", "lower end of its interval, strips as clusters", row => row.Time.PooledInterval?.Low),
        ("pooled_high_days", "upper end", row => row.Time.PooledInterval?.High));

    private static ResultTable StripTimes(TrialAnalysis analysis) => ResultTable.Of(
        "emergence-strip-times",
        "one time of one strip, its seeds taken as independent",
        analysis.Strips.Emergence.SelectMany(strip => new[] { ("t10", strip.T10), ("t50", strip.T50), ("t90", strip.T90), ("t10-sown", strip.T10OfSown), ("t50-sown", strip.T50OfSown), ("t90-sown", strip.T90OfSown) }
            .Where(time => time.Item2 is not null)
            .Select(time => (strip.Strip, Id: time.Item1, Time: time.Item2!, Interval: time.Item2!.IntervalAt(analysis.Trial.Design.Level)))),
        ("strip", "the strip", row => row.Strip.Name),
        ("time", "id of the time; sown: of the seeds sown, else of the plants that come up", row => row.Id),
        ("days", "days after planting", row => row.Time.Days),
        ("standard_error", "days", row => row.Time.StandardError),
        ("low_days", "lower end of its interval, even on the log scale", row => row.Interval?.Low),
        ("high_days", "upper end", row => row.Interval?.High),
        ("heat_f_days", "heat by then, by the trial's method", row => row.Time.Heat?.FahrenheitDays),
        ("average_heat_f_days", "heat by then, by the simple average above 50 F", row => row.Time.AverageHeat?.FahrenheitDays));

    private static ResultTable Scores(TrialAnalysis analysis) => ResultTable.Of(
        "emergence-score-tests",
        "a score test of two treatments, strips exchanged within blocks",
        analysis.Emergence is { } review ? review.Tests.SelectMany(test => test.Scores.Select(score => (Test: test, Score: score))) : [],
        ("treatment", "the treatment", row => row.Test.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Test.Baseline.Name),
        ("of", "seeds sown (share and time together) or plants up (time alone)", row => row.Score.Of),
        ("blocks", "blocks that hold both", row => row.Score.Blocks),
        ("statistic", "above zero when the treatment is sooner", row => row.Score.Statistic),
        ("p", "two-sided", row => row.Score.P?.Value),
        ("exact", "whether every arrangement was counted", row => row.Score.IsExact),
        ("p_smallest_possible", "the smallest p this many blocks can give", row => row.Score.SmallestP.Value));

    private static ResultTable Ratios(TrialAnalysis analysis) => ResultTable.Of(
        "emergence-time-ratios",
        "the ratio of times of two treatments from one pooled curve",
        analysis.Emergence is { } review
            ? review.Tests.Where(test => test.Pooled is not null).Select(test => (Test: test, Pooled: test.Pooled!, Interval: test.Pooled!.IntervalAt(analysis.Trial.Design.Level)))
            : [],
        ("treatment", "the treatment", row => row.Test.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Test.Baseline.Name),
        ("ratio", "time with the treatment over time with the baseline", row => row.Pooled.Ratio),
        ("low", "lower end of its interval", row => row.Interval?.Low),
        ("high", "upper end", row => row.Interval?.High),
        ("log_ratio", "natural logarithm of the ratio", row => row.Pooled.LogRatio.Value),
        ("standard_error", "of the log, strips as clusters, with the factor for few strips", row => row.Pooled.LogRatio.StandardError),
        ("seed_standard_error", "of the log, if seeds were independent: too small", row => row.Pooled.SeedStandardError),
        ("df", "degrees of freedom", row => row.Pooled.LogRatio.DegreesOfFreedom),
        ("p", "two-sided", row => row.Pooled.LogRatio.PTwoSided.Value));

    private static ResultTable Undefined(TrialAnalysis analysis) => ResultTable.Of(
        "emergence-undefined",
        "a stretch in which a treatment's curve without a model may run anywhere",
        analysis.Emergence is { } review ? review.Treatments.SelectMany(treatment => treatment.Undefined.Select(stretch => (treatment.Treatment, Stretch: stretch))) : [],
        ("treatment", "the treatment", row => row.Treatment.Name),
        ("from_days", "its beginning", row => row.Stretch.FromDays),
        ("to_days", "its end", row => row.Stretch.ToDays),
        ("low_share", "share up at its beginning", row => row.Stretch.LowShare),
        ("high_share", "share up at its end", row => row.Stretch.HighShare));

    private static ResultTable Evenness(TrialAnalysis analysis) => ResultTable.Of<StripEvenness>(
        "evenness",
        "how evenly one strip came up, plant by plant",
        analysis.Strips.Evenness,
        ("strip", "the strip", row => row.Strip.Name),
        ("plants", "plants dated", row => row.Lags.Length),
        ("visits_tell_lags", "whether visits were a day apart or less while plants came up; else lags are not summed up", row => row.VisitsTellLags),
        ("mean_lag_days", "behind the first plant of the spot", row => row.MeanLag),
        ("sd_lag_days", "standard deviation, n - 1", row => row.StandardDeviation),
        ("percent_24h_of_first", "within 24 h of the first", row => row.PercentWithin24HoursOfFirst),
        ("percent_48h_of_first", "within 48 h of the first", row => row.PercentWithin48HoursOfFirst),
        ("percent_24h_of_median", "within 24 h before or after the spot's median", row => row.PercentWithin24HoursOfMedian),
        ("percent_48h_of_median", "within 48 h before or after the spot's median", row => row.PercentWithin48HoursOfMedian),
        ("percent_late", "more than 3 days behind the first", row => row.PercentLate));

    private static ResultTable Lags(TrialAnalysis analysis) => ResultTable.Of(
        "plant-lags",
        "one plant whose emergence was dated by itself",
        analysis.Strips.Evenness.SelectMany(strip => strip.Lags.Where(lag => lag.Plant is not null).Select(lag => (strip.Strip, strip.VisitsTellLags, Lag: lag))),
        ("strip", "the strip", row => row.Strip.Name),
        ("spot", "the spot", row => row.Lag.Spot),
        ("plant", "the plant", row => row.Lag.Plant),
        ("position_cm", "on the tape", row => row.Lag.Position?.Centimeters),
        ("first_seen_days", "days after planting", row => row.Lag.Days),
        ("behind_first_days", "behind the first plant of the spot", row => row.Lag.BehindFirst),
        ("behind_median_days", "behind the median of the spot", row => row.Lag.BehindMedian),
        ("behind_neighbours_days", "behind the mean of its two neighbours", row => row.Lag.BehindNeighbours),
        ("late", "more than 3 days behind the first; empty where the visits do not tell it", row => row.VisitsTellLags ? row.Lag.IsLate : null));

    private static ResultTable Stages(TrialAnalysis analysis) => ResultTable.Of<StripStage>(
        "leaf-stage",
        "leaf stage of one strip's plants behind the mode of their spot",
        analysis.Strips.Stages,
        ("strip", "the strip", row => row.Strip.Name),
        ("plants", "plants staged", row => row.Plants),
        ("percent_one_behind", "one leaf or more behind", row => row.PercentOneBehind),
        ("percent_two_behind", "two leaves or more behind", row => row.PercentTwoBehind),
        ("mean_leaves_behind", "plants ahead count as 0", row => row.MeanLeavesBehind),
        ("mean_heat_behind_f_days", "the same in corn heat units", row => row.MeanHeatBehind?.FahrenheitDays),
        ("mean_days_behind", "days that heat took after half were up", row => row.MeanDaysBehind));

    private static ResultTable OddSpacings(TrialAnalysis analysis) => ResultTable.Of(
        "odd-spacings",
        "a skip or a double, and where it is",
        analysis.Strips.Spacings.SelectMany(strip => strip.Odd.Select(odd => (strip.Strip, Odd: odd))),
        ("strip", "the strip", row => row.Strip.Name),
        ("spot", "the spot", row => row.Odd.Spot),
        ("kind", "double or skip", row => row.Odd.Kind == SpacingKind.Multiple ? "double" : "skip"),
        ("before", "the plant at its beginning", row => row.Odd.Before.Name),
        ("after", "the plant at its end", row => row.Odd.After.Name),
        ("from_cm", "where it begins on the tape", row => row.Odd.Before.Position?.Centimeters),
        ("gap_cm", "its length", row => row.Odd.Gap.Centimeters),
        ("seed_spacings", "its length in seed spacings", row => row.Odd.SeedSpacings));

    private static ResultTable Limits(TrialAnalysis analysis) => ResultTable.Of(
        "spacing-limits",
        "what spacing of one strip could have been at best",
        analysis.Strips.Spacings.Where(strip => strip.Floor is not null),
        ("strip", "the strip", row => row.Strip.Name),
        ("survival", "plants on the tape per seed dropped, by the mean gap, at most 1", row => row.Survival),
        ("sd_floor_cm", "standard deviation of a perfect drop with that survival", row => row.Floor?.Centimeters),
        ("sd_cm", "standard deviation found", row => row.StandardDeviation?.Centimeters),
        ("precision_percent", "SD of single spacings over the seed spacing", row => row.Precision),
        ("multiples_by_place_percent", "doubles over places", row => row.Classes?.MultiplesByPlace),
        ("singles_by_place_percent", "single plants over places", row => row.Classes?.SinglesByPlace),
        ("missed_by_place_percent", "empty places over places", row => row.Classes?.MissedByPlace));

    private static ResultTable Response(TrialAnalysis analysis) => ResultTable.Of(
        "stand-response",
        "one strip's stand looked up in a published table of corn yield by stand and planting date; one region's data",
        Trials.Identifier.Same(analysis.Trial.Crop.Name, "corn") ? analysis.Strips.Stands : [],
        ("strip", "the strip", row => row.Strip.Name),
        ("stand_per_ac", "plants per acre", row => row.Mean.PerAcre),
        ("planted", "the planting date", row => row.Strip.Planted.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)),
        ("percent_of_best", "empty outside the table", row => StandResponse.PercentAt(row.Strip.Planted, row.Mean)),
        ("source", "the table", _ => StandResponse.Source));

    private static ResultTable Published(TrialAnalysis analysis)
    {
        var corn = Trials.Identifier.Same(analysis.Trial.Crop.Name, "corn");
        return ResultTable.Of<PublishedFinding>(
            "published",
            "what a study found elsewhere; no figure of this trial",
            [
                .. corn && !analysis.Strips.Evenness.IsEmpty ? LatePlants.Published : [],
                .. corn && !analysis.Strips.Spacings.IsEmpty ? SpacingOpinions.Published : [],
            ],
            ("topic", "what it is about", row => row.Topic),
            ("study", "the study", row => row.Study),
            ("setting", "what was compared there", row => row.Setting),
            ("found", "what was found", row => row.Found));
    }
}
