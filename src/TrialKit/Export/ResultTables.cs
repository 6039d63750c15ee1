using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Analysis;
using TrialKit.Comparison;
using TrialKit.Emergence;
using TrialKit.Results;
using TrialKit.Stand;

namespace TrialKit.Export;

/// <summary>An analysis as tables, every number at full precision.</summary>
/// <remarks>Names of tables and columns are stable; a change of either is a new schema version.</remarks>
public static class ResultTables
{
    /// <summary>The version of names and meanings.</summary>
    public const int SchemaVersion = 1;

    /// <summary>Every table of an analysis that has a row.</summary>
    /// <param name="analysis">The analysis.</param>
    public static ImmutableArray<ResultTable> Of(TrialAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ResultTable[] tables =
        [
            Comparisons(analysis),
            Means(analysis),
            Pairs(analysis),
            Anova(analysis),
            .. ComparisonTables.Of(analysis),
            StripValues(analysis),
            Stands(analysis),
            Emergence(analysis),
            EmergenceCurves(analysis.Strips),
            EmergenceIndices(analysis.Strips),
            Spacing(analysis.Strips),
            Depth(analysis.Strips),
            Yields(analysis.Strips),
            .. StarterTables.Of(analysis),
            .. MoneyTables.Of(analysis),
            Heat(analysis),
            .. EmergenceReviewTables.Of(analysis),
            .. ForecastTables.Of(analysis),
            FindingsOf(analysis.AllFindings),
            MethodsOf(analysis.Methods),
        ];
        return [.. tables.Where(table => table.Rows.Count > 0)];
    }

    private static ResultTable Comparisons(TrialAnalysis analysis) => ResultTable.Of(
        "comparisons",
        "one treatment against another on one measure",
        analysis.Measures.SelectMany(measure => measure.Contrasts.Select(contrast => (Measure: measure, Contrast: contrast))),
        ("measure", "id of the measure", row => row.Measure.Measure.Id),
        ("unit", "unit of difference, error and interval", row => row.Measure.Measure.Unit.Symbol),
        ("treatment", "the treatment", row => row.Contrast.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Contrast.Baseline.Name),
        ("difference", "treatment less baseline", row => row.Contrast.Difference),
        ("standard_error", "of the difference", row => row.Contrast.Estimate?.StandardError),
        ("df", "degrees of freedom", row => row.Contrast.Estimate?.DegreesOfFreedom),
        ("replicates", "pairs or blocks behind the difference", row => row.Contrast.Estimate?.Replicates),
        ("t", "difference over standard error", row => row.Contrast.Estimate?.T),
        ("p", "two-sided, as judged", row => row.Contrast.P?.Value),
        ("p_unadjusted", "two-sided, of this comparison alone", row => row.Contrast.Estimate?.PTwoSided.Value),
        ("alpha", "level of interval and verdict", row => row.Contrast.Level.Alpha),
        ("low", "lower end of the interval", row => row.Contrast.Interval?.Low),
        ("high", "upper end of the interval", row => row.Contrast.Interval?.High),
        ("detectable_80", "true difference shown with a chance of 80 %", row => row.Contrast.Detectable),
        ("verdict", "shown, not shown, equivalent (within a margin set beforehand) or not judged, at alpha", row => VerdictName(row.Contrast.Verdict)),
        ("judged_by", "the procedure behind p and interval", row => row.Contrast.JudgedBy.Name),
        ("p_sign_flips", "exact, two-sided", row => row.Measure.Pairs?.SignFlips?.P.Value),
        ("p_signed_rank", "exact, two-sided", row => row.Measure.Pairs?.SignedRank?.P.Value),
        ("p_smallest_possible", "the smallest exact p this many pairs can give", row => row.Measure.Pairs?.SignFlips?.SmallestPossible.Value));

    private static ResultTable Means(TrialAnalysis analysis) => ResultTable.Of(
        "treatment-means",
        "one treatment's mean of one measure over its strips",
        analysis.Measures.SelectMany(measure => measure.Means.Select(mean => (Measure: measure, Mean: mean))),
        ("measure", "id of the measure", row => row.Measure.Measure.Id),
        ("unit", "unit of the mean", row => row.Measure.Measure.Unit.Symbol),
        ("treatment", "the treatment", row => row.Mean.Treatment.Name),
        ("strips", "strips behind the mean", row => row.Mean.Strips),
        ("mean", "adjusted for blocks when strips are missing", row => row.Mean.Mean));

    private static ResultTable Pairs(TrialAnalysis analysis) => ResultTable.Of(
        "pairs",
        "one pair of strips on one measure",
        analysis.Measures.Where(measure => measure.Pairs is not null).SelectMany(measure => measure.Pairs!.Pairs.Select(pair => (Measure: measure, Pair: pair))),
        ("measure", "id of the measure", row => row.Measure.Measure.Id),
        ("unit", "unit of the values", row => row.Measure.Measure.Unit.Symbol),
        ("block", "the pair", row => row.Pair.Block),
        ("treated_strip", "the strip with the treatment", row => row.Pair.Treated.Name),
        ("control_strip", "the strip with the control", row => row.Pair.Control.Name),
        ("treated_value", "its value", row => row.Pair.TreatedValue),
        ("control_value", "its value", row => row.Pair.ControlValue),
        ("difference", "treatment less control", row => row.Pair.Difference));

    private static ResultTable Anova(TrialAnalysis analysis) => ResultTable.Of(
        "anova",
        "one line of the analysis of variance of one measure",
        analysis.Measures.Where(measure => measure.Blocks is not null).SelectMany(measure => measure.Blocks!.Anova.Rows.Select(line => (Measure: measure, Line: line))),
        ("measure", "id of the measure", row => row.Measure.Measure.Id),
        ("source", "blocks, treatments or error", row => row.Line.Source),
        ("df", "degrees of freedom", row => row.Line.DegreesOfFreedom),
        ("sum_of_squares", "in the square of the unit", row => row.Line.SumOfSquares),
        ("mean_square", "sum of squares per degree of freedom", row => row.Line.MeanSquare),
        ("f", "ratio to the error mean square", row => row.Line.F),
        ("p", "upper tail of F", row => row.Line.P?.Value),
        ("cv_percent", "coefficient of variation of the measure", row => row.Measure.Blocks!.Anova.CoefficientOfVariation));

    private static ResultTable StripValues(TrialAnalysis analysis) => ResultTable.Of(
        "strip-values",
        "one measure on one strip",
        analysis.Measures.SelectMany(measure => measure.Values.Values.Select(entry => (measure.Measure, Entry: entry))),
        ("strip", "the strip", row => row.Entry.Strip.Name),
        ("block", "its block", row => row.Entry.Strip.Block),
        ("treatment", "its treatment", row => row.Entry.Strip.Treatment.Name),
        ("order", "its place across the field", row => row.Entry.Strip.Order),
        ("measure", "id of the measure", row => row.Measure.Id),
        ("unit", "unit of the value", row => row.Measure.Unit.Symbol),
        ("value", "the value; empty when not recorded or not defined", row => row.Entry.Value),
        ("left_out", "why the strip is left out of the comparison", row => row.Entry.Strip.LeftOut));

    private static ResultTable Stands(TrialAnalysis analysis) => ResultTable.Of(
        "stand",
        "the stand of one strip",
        analysis.Strips.Stands.Select(stand => (Stand: stand, Interval: stand.IntervalAt(analysis.Trial.Design.Level, Quantities.UnitSystem.Metric))),
        ("strip", "the strip", row => row.Stand.Strip.Name),
        ("spots", "spots counted", row => row.Stand.Spots.Length),
        ("mean_per_ha", "plants per hectare", row => row.Stand.Mean.PerHectare),
        ("mean_per_ac", "plants per acre", row => row.Stand.Mean.PerAcre),
        ("sd_per_ha", "between spots", row => row.Stand.StandardDeviation?.PerHectare),
        ("low_per_ha", "lower end of the strip's own interval, over spots", row => row.Interval?.Low),
        ("high_per_ha", "upper end of the strip's own interval, over spots", row => row.Interval?.High),
        ("alpha", "level of that interval", row => row.Interval?.Level.Alpha),
        ("percent_of_seeds", "of seeds dropped", row => row.Stand.PercentOfSeeds));

    private static ResultTable Emergence(TrialAnalysis analysis) => ResultTable.Of<StripEmergence>(
        "strip-emergence",
        "the event-time fit of one strip; times are of the plants that came up",
        analysis.Strips.Emergence,
        ("strip", "the strip", row => row.Strip.Name),
        ("spots", "spots visited", row => row.Spots.Length),
        ("seeds_sown", "seeds at those spots", row => row.SeedsSown),
        ("plants_up", "plants up in the end", row => row.PlantsUp),
        ("final_percent", "of seeds sown, up in the end", row => row.FinalPercent),
        ("final_low_percent", "lower end of its interval by Wilson, seeds taken as independent: too narrow", row => row.FinalIntervalAt(analysis.Trial.Design.Level)?.Low),
        ("final_high_percent", "upper end", row => row.FinalIntervalAt(analysis.Trial.Design.Level)?.High),
        ("model", "the curve", row => row.Fit.Model),
        ("share_d", "share that ever comes up", row => row.Fit.Share?.Value),
        ("share_d_se", "its standard error, seeds taken as independent", row => row.Fit.Share?.StandardError),
        ("steepness_b", "steepness", row => row.Fit.Steepness?.Value),
        ("steepness_b_se", "its standard error", row => row.Fit.Steepness?.StandardError),
        ("location_e_days", "location e: the median of those that come up, in a Weibull curve the time to 63 % of them", row => row.Fit.Location?.Value),
        ("location_e_se_days", "its standard error", row => row.Fit.Location?.StandardError),
        ("log_likelihood", "at the maximum", row => row.Fit.LogLikelihood),
        ("gradient_norm", "at the maximum, on the working scale", row => row.Fit.GradientNorm),
        ("converged", "whether the search ended at a maximum", row => row.Fit.Converged),
        ("t10_days", "10 % up", row => row.T10?.Days),
        ("t50_days", "50 % up", row => row.T50?.Days),
        ("t90_days", "90 % up", row => row.T90?.Days),
        ("spread_days", "t90 less t10", row => row.Spread?.Days),
        ("t50_heat_f_days", "heat to 50 % up by the trial's method", row => row.T50?.Heat?.FahrenheitDays),
        ("t50_average50_heat_f_days", "heat to 50 % up by the simple average above 50 F", row => row.T50?.AverageHeat?.FahrenheitDays),
        ("t10_heat_f_days", "heat to 10 % up by the trial's method", row => row.T10?.Heat?.FahrenheitDays),
        ("t10_average50_heat_f_days", "heat to 10 % up by the simple average above 50 F", row => row.T10?.AverageHeat?.FahrenheitDays),
        ("t90_heat_f_days", "heat to 90 % up by the trial's method", row => row.T90?.Heat?.FahrenheitDays),
        ("t90_average50_heat_f_days", "heat to 90 % up by the simple average above 50 F", row => row.T90?.AverageHeat?.FahrenheitDays),
        ("spread_heat_f_days", "heat between 10 % and 90 % up by the trial's method", row => row.Spread?.Heat?.FahrenheitDays),
        ("spread_average50_heat_f_days", "heat between 10 % and 90 % up by the simple average above 50 F", row => row.Spread?.AverageHeat?.FahrenheitDays),
        ("percent_within_24h", "up within 24 h of the first plant of their spot; empty where the visits do not tell it", row => row.PercentWithin24Hours),
        ("percent_within_48h", "up within 48 h of the first plant of their spot; empty where the visits do not tell it", row => row.PercentWithin48Hours));

    private static ResultTable EmergenceCurves(StripSummaries strips) => ResultTable.Of(
        "emergence-curves",
        "the share up at one visit to one strip",
        strips.Emergence.SelectMany(strip => strip.Curve.Select(point => (strip.Strip, Point: point))),
        ("strip", "the strip", row => row.Strip.Name),
        ("days", "days after planting", row => row.Point.Days),
        ("share", "share of the seeds sown that were up; of the plants seen where the seeds are unknown", row => row.Point.Share),
        ("standard_error", "seeds taken as independent", row => row.Point.StandardError));

    private static ResultTable EmergenceIndices(StripSummaries strips) => ResultTable.Of(
        "emergence-indices",
        "one timing index of one strip, under its author's name",
        strips.Emergence.SelectMany(strip => strip.Indices.Select(index => (strip.Strip, Index: index))),
        ("strip", "the strip", row => row.Strip.Name),
        ("index", "id of the index", row => row.Index.Id),
        ("name", "its name", row => row.Index.Method.Name),
        ("value", "its value", row => row.Index.Value),
        ("unit", "its unit", row => row.Index.Unit.Symbol),
        ("source", "where it is published", row => row.Index.Method.Source),
        ("remark", "why there is no value", row => row.Index.Remark));

    private static ResultTable Spacing(StripSummaries strips) => ResultTable.Of<StripSpacing>(
        "spacing",
        "in-row spacing of one strip",
        strips.Spacings,
        ("strip", "the strip", row => row.Strip.Name),
        ("spacings", "spacings measured", row => row.Gaps),
        ("mean_cm", "mean", row => row.Mean?.Centimeters),
        ("sd_cm", "standard deviation", row => row.StandardDeviation?.Centimeters),
        ("cv_percent", "coefficient of variation", row => row.CoefficientOfVariation),
        ("reference_cm", "seed spacing that classes refer to", row => row.SeedSpacing?.Centimeters),
        ("multiples_percent", "share of spacings up to half the seed spacing", row => row.Classes?.Multiples),
        ("single_percent", "share of single spacings", row => row.Classes?.Singles),
        ("missed_percent", "share of spacings over one and a half seed spacings", row => row.Classes?.Missed));

    private static ResultTable Depth(StripSummaries strips) => ResultTable.Of<StripDepth>(
        "depth",
        "seed depth of one strip",
        strips.Depths,
        ("strip", "the strip", row => row.Strip.Name),
        ("plants", "plants dug", row => row.Plants),
        ("mean_cm", "mean", row => row.Mean.Centimeters),
        ("sd_cm", "standard deviation", row => row.StandardDeviation?.Centimeters),
        ("cv_percent", "coefficient of variation", row => row.CoefficientOfVariation),
        ("bias_cm", "mean less target", row => row.Bias?.Centimeters),
        ("percent_near_target", "share within a quarter inch of the target", row => row.PercentNearTarget));

    private static ResultTable Yields(StripSummaries strips) => ResultTable.Of<Money.StripYield>(
        "yield",
        "yield of one strip at standard moisture",
        strips.Yields,
        ("strip", "the strip", row => row.Strip.Name),
        ("weight_kg", "as weighed", row => row.Harvest.Weight.Kilograms),
        ("moisture_percent", "as weighed", row => row.Harvest.Moisture.Percent),
        ("area_ha", "harvested", row => row.Harvest.HarvestedArea?.Hectares),
        ("standard_moisture_percent", "of the crop", row => row.StandardMoisture?.Percent),
        ("yield_t_ha", "tonnes per hectare", row => row.Yield?.TonnesPerHectare),
        ("yield_bu_ac", "bushels per acre", row => row.In(Quantities.UnitSystem.Us)));

    private static ResultTable Heat(TrialAnalysis analysis) => ResultTable.Of(
        "heat",
        "the heat of one day since planting",
        analysis.Heat is { } heat ? heat.Clock.Days.Zip(heat.Average.Days) : [],
        ("date", "the day", row => row.First.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        ("heat_f_days", "of the day, by the trial's method", row => row.First.Heat.FahrenheitDays),
        ("sum_f_days", "since planting, by the trial's method", row => row.First.Sum.FahrenheitDays),
        ("average50_heat_f_days", "of the day, by the simple average above 50 F", row => row.Second.Heat.FahrenheitDays),
        ("average50_sum_f_days", "since planting, by the simple average above 50 F", row => row.Second.Sum.FahrenheitDays));

    internal static ResultTable FindingsOf(IEnumerable<Finding> findings) => ResultTable.Of<Finding>(
        "findings",
        "something to know or doubt",
        findings,
        ("id", "a stable name", row => row.Id),
        ("weight", "note, caution or serious", row => WeightName(row.Weight)),
        ("where", "the measure, strip or spot", row => row.Where),
        ("message", "a sentence", row => row.Message));

    internal static ResultTable MethodsOf(IEnumerable<Method> methods) => ResultTable.Of<Method>(
        "methods",
        "a procedure that was used",
        methods,
        ("name", "its name", row => row.Name),
        ("source", "where it is published", row => row.Source),
        ("page", "its page in the documentation", row => row.Page));

    internal static string VerdictName(Verdict verdict) => verdict switch
    {
        Verdict.Shown => "shown",
        Verdict.NotShown => "not shown",
        Verdict.Equivalent => "equivalent",
        _ => "not judged",
    };

    internal static string WeightName(FindingWeight weight) => weight switch
    {
        FindingWeight.Note => "note",
        FindingWeight.Caution => "caution",
        _ => "serious",
    };
}
