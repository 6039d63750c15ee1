using System.Collections.Immutable;

namespace TrialKit.Export;

/// <summary>Trials put together, as tables.</summary>
/// <remarks>Names of tables and columns are stable, as those of <see cref="ResultTables"/>.</remarks>
public static class PoolTables
{
    /// <summary>Every table that has a row.</summary>
    /// <param name="pooled">The trials put together.</param>
    public static ImmutableArray<ResultTable> Of(PooledTrials pooled)
    {
        ArgumentNullException.ThrowIfNull(pooled);
        ResultTable[] tables = [Comparisons(pooled), Sites(pooled), Mixed(pooled), ResultTables.FindingsOf(pooled.AllFindings), ResultTables.MethodsOf(pooled.Methods)];
        return [.. tables.Where(table => table.Rows.Count > 0)];
    }

    private static ResultTable Comparisons(PooledTrials pooled) => ResultTable.Of(
        "pooled",
        "one treatment against another on one measure over sites, by one way of weighing them",
        from comparison in pooled.Comparisons
        from estimate in new[] { comparison.Reml, comparison.Moments, comparison.Common }
        select (Comparison: comparison, Pooled: estimate),
        ("measure", "id of the measure", row => row.Comparison.Measure.Id),
        ("unit", "unit of difference, error and intervals", row => row.Comparison.Measure.Unit.Symbol),
        ("treatment", "the treatment", row => row.Comparison.Pair.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Comparison.Pair.Baseline.Name),
        ("method", "how sites are weighed; the first is the verdict's", row => row.Pooled.Estimate.Method.Name),
        ("sites", "sites behind it", row => row.Comparison.Sites.Length),
        ("difference", "treatment less baseline", row => row.Pooled.Estimate.Value),
        ("standard_error", "of the difference", row => row.Pooled.Estimate.StandardError),
        ("df", "degrees of freedom; empty for the normal distribution", row => double.IsFinite(row.Pooled.Estimate.DegreesOfFreedom) ? row.Pooled.Estimate.DegreesOfFreedom : null),
        ("p", "two-sided", row => row.Pooled.Estimate.PTwoSided.Value),
        ("alpha", "level of interval and verdict", row => row.Comparison.Level.Alpha),
        ("low", "lower end of the interval", row => row.Pooled.Estimate.IntervalAt(row.Comparison.Level).Low),
        ("high", "upper end of the interval", row => row.Pooled.Estimate.IntervalAt(row.Comparison.Level).High),
        ("prediction_low", "lower end for another site like these", row => row.Pooled.Prediction?.Low),
        ("prediction_high", "upper end for another site like these", row => row.Pooled.Prediction?.High),
        ("between_variance", "of the true difference between sites", row => row.Pooled.BetweenVariance),
        ("error_was_raised", "whether the error was raised to what the sites' own errors give", row => row.Pooled.ErrorWasRaised),
        ("q", "Cochran's Q", row => row.Comparison.Heterogeneity.Statistic),
        ("p_q", "upper tail of chi-square", row => row.Comparison.Heterogeneity.P.Value),
        ("inconsistency", "share of the spread that lies between sites", row => row.Comparison.Inconsistency),
        ("verdict", "shown or not shown, at alpha, by the first method", row => ResultTables.VerdictName(row.Comparison.Verdict)));

    private static ResultTable Sites(PooledTrials pooled) => ResultTable.Of(
        "sites",
        "one treatment against another on one measure at one site",
        pooled.Comparisons.SelectMany(comparison => comparison.Sites.Select(site => (Comparison: comparison, Site: site))),
        ("measure", "id of the measure", row => row.Comparison.Measure.Id),
        ("unit", "unit of difference, error and interval", row => row.Comparison.Measure.Unit.Symbol),
        ("treatment", "the treatment", row => row.Comparison.Pair.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Comparison.Pair.Baseline.Name),
        ("site", "the site", row => row.Site.Site),
        ("difference", "treatment less baseline", row => row.Site.Estimate.Value),
        ("standard_error", "of the difference", row => row.Site.Estimate.StandardError),
        ("df", "degrees of freedom", row => row.Site.Estimate.DegreesOfFreedom),
        ("replicates", "pairs or blocks", row => row.Site.Estimate.Replicates),
        ("low", "lower end of the interval of this comparison alone", row => row.Site.Estimate.IntervalAt(row.Comparison.Level).Low),
        ("high", "upper end", row => row.Site.Estimate.IntervalAt(row.Comparison.Level).High),
        ("weight", "share of the pooled difference (REML)", row => row.Site.Weight));

    private static ResultTable Mixed(PooledTrials pooled) => ResultTable.Of(
        "mixed-model",
        "one mixed model of all strips of all sites on one measure",
        pooled.Comparisons.Where(comparison => comparison.Mixed is not null).Select(comparison => (Comparison: comparison, Mixed: comparison.Mixed!)),
        ("measure", "id of the measure", row => row.Comparison.Measure.Id),
        ("unit", "unit of difference and error", row => row.Comparison.Measure.Unit.Symbol),
        ("treatment", "the treatment", row => row.Comparison.Pair.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Comparison.Pair.Baseline.Name),
        ("strips", "strips behind it", row => row.Mixed.Strips),
        ("difference", "treatment less baseline", row => row.Mixed.Estimate?.Value),
        ("standard_error", "of the difference", row => row.Mixed.Estimate?.StandardError),
        ("df", "Satterthwaite's degrees of freedom", row => row.Mixed.Estimate?.DegreesOfFreedom),
        ("p", "two-sided", row => row.Mixed.Estimate?.PTwoSided.Value),
        ("low", "lower end of the interval", row => row.Mixed.Estimate?.IntervalAt(row.Comparison.Level).Low),
        ("high", "upper end of the interval", row => row.Mixed.Estimate?.IntervalAt(row.Comparison.Level).High),
        ("site_variance", "between sites", row => row.Mixed.SiteVariance),
        ("site_treatment_variance", "of treatments within sites", row => row.Mixed.SiteTreatmentVariance),
        ("block_variance", "between blocks of a site", row => row.Mixed.BlockVariance),
        ("residual_variance", "of strips within a block", row => row.Mixed.ResidualVariance),
        ("singular", "whether a variance was estimated as 0", row => row.Mixed.IsSingular));
}
