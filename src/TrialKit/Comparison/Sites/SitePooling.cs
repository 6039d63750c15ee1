using System.Globalization;
using TrialKit.Numerics.Meta;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Comparison.Sites;

/// <summary>Puts the differences of several sites together.</summary>
internal static class SitePooling
{
    /// <summary>One comparison over sites; null when fewer than two sites gave a difference with an error.</summary>
    /// <param name="measure">The measure, in one unit at all sites.</param>
    /// <param name="pair">The two treatments.</param>
    /// <param name="sites">Each site's part in the measure.</param>
    /// <param name="level">The level of intervals and verdict.</param>
    public static PooledComparison? Of(Measure measure, ComparedPair pair, IReadOnlyList<(string Site, SiteMeasure Measure)> sites, ConfidenceLevel level)
    {
        var found = sites.Select(site => (site.Site, Estimate: site.Measure.EstimateOf(pair))).Where(site => site.Estimate is not null).Select(site => (site.Site, Estimate: site.Estimate!)).ToArray();
        if (found.Length < 2)
        {
            return null;
        }

        double[] estimates = [.. found.Select(site => site.Estimate.Value)];
        double[] variances = [.. found.Select(site => site.Estimate.StandardError * site.Estimate.StandardError)];
        var common = MetaAnalysis.Of(estimates, variances, Numerics.Meta.Heterogeneity.Common);
        var moments = MetaAnalysis.Of(estimates, variances, Numerics.Meta.Heterogeneity.DerSimonianLaird);
        var reml = MetaAnalysis.Of(estimates, variances, Numerics.Meta.Heterogeneity.Reml);
        var total = variances.Sum(variance => 1 / (variance + reml.BetweenVariance));
        var mixed = SiteModel.Of(pair, sites, measure.Unit);
        return new(
            measure,
            pair,
            [.. found.Select((site, index) => new SiteEstimate(site.Site, site.Estimate, 1 / (variances[index] + reml.BetweenVariance) / total))],
            new PooledEstimate(new(common.Estimate, common.NormalStandardError, double.PositiveInfinity, found.Length, measure.Unit, Methods.CommonEffect), 0, ErrorWasRaised: false, Prediction: null),
            Random(moments, Methods.DerSimonianLaird),
            Random(reml, Methods.RemlSites),
            new FTest(common.Q, common.DegreesOfFreedom, DenominatorDegrees: null, Probability.Of(common.QProbability), Methods.CommonEffect),
            reml.Inconsistency,
            mixed,
            level,
            [.. Doubts(measure, pair, sites, found.Length, reml, mixed)]);

        PooledEstimate Random(MetaAnalysis pooled, Method method)
        {
            var (low, high) = pooled.PredictionIntervalAt(level.Confidence);
            return new(new(pooled.Estimate, pooled.StandardError, pooled.DegreesOfFreedom, pooled.Sites, measure.Unit, method), pooled.BetweenVariance, pooled.ScaleWasRaised, new Interval(low, high, level));
        }
    }

    private static IEnumerable<Finding> Doubts(Measure measure, ComparedPair pair, IReadOnlyList<(string Site, SiteMeasure Measure)> sites, int used, MetaAnalysis reml, MixedEstimate? mixed)
    {
        if (used < sites.Count)
        {
            yield return new("sites-without-estimate", FindingWeight.Caution, Text($"{measure.Label}: {used} of {sites.Count} sites gave a difference with an error; the others are not in the pooled figure."), measure.Id);
        }

        if (used == 2)
        {
            yield return new("two-sites", FindingWeight.Caution, Text($"{measure.Label}: two sites leave one degree of freedom for how sites differ; the pooled interval is very wide for that reason alone."), measure.Id);
        }

        if (reml.ScaleWasRaised)
        {
            yield return new("sites-agree-by-chance", FindingWeight.Note, Text($"{measure.Label}: the sites agree better than their own errors let expect; the pooled error was raised to what those errors give."), measure.Id);
        }

        var strips = sites.Sum(site => SiteModel.StripsOf(pair, site.Measure).Count());
        if (strips > SiteModel.MostStrips)
        {
            yield return new("mixed-model-left-out", FindingWeight.Note, Text($"{measure.Label}: {strips} strips are more than the {SiteModel.MostStrips} that one mixed model is fitted to; the pooled figures of sites stand alone."), measure.Id);
        }

        if (mixed is { IsSingular: true })
        {
            yield return new("mixed-model-singular", FindingWeight.Note, Text($"{measure.Label}: the mixed model of all strips finds no variance for one of site, site by treatment or block; its error counts that one as nothing."), measure.Id);
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
