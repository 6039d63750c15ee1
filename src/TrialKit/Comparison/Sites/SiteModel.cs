using TrialKit.Numerics.Mixed;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison.Sites;

/// <summary>All strips of two treatments at all sites in one mixed model.</summary>
/// <remarks>y = treatment + site + site x treatment + block within site + e, treatment fixed, the others random; REML, Satterthwaite degrees of freedom.</remarks>
internal static class SiteModel
{
    /// <summary>Strips that one model takes at most: its matrices have a line for each site, each treatment within one and each block, and its time grows with the cube of their number.</summary>
    public const int MostStrips = 1200;

    /// <summary>The difference of two treatments; null for more strips than one model takes, where a site has no two blocks, or fewer than two sites have both treatments.</summary>
    public static MixedEstimate? Of(ComparedPair pair, IReadOnlyList<(string Site, SiteMeasure Measure)> sites, Unit unit)
    {
        var rows = sites.SelectMany(site => StripsOf(pair, site.Measure)
            .Select(strip => new Row(strip.Value, site.Site, strip.Block.Trim().ToUpperInvariant(), Identifier.Same(strip.Treatment, pair.Treatment.Name)))).ToArray();
        if (rows.Length > MostStrips)
        {
            return null;
        }

        var whole = rows.GroupBy(row => row.Site, StringComparer.Ordinal).Count(site => site.Any(row => row.IsTreated) && site.Any(row => !row.IsTreated));
        if (whole < 2)
        {
            return null;
        }

        var design = new double[rows.Length, 2];
        for (var i = 0; i < rows.Length; i++)
        {
            design[i, 0] = 1;
            design[i, 1] = rows[i].IsTreated ? 1 : 0;
        }

        // A factor that parts the strips no further than one before it, or one by one, cannot be told from that one or from error.
        var (names, factors) = (new List<string>(), new List<int[]>());
        Add("site", row => row.Site);
        Add("treatment", row => (row.Site, row.IsTreated));
        Add("block", row => (row.Site, row.Block));
        var fit = MixedFit.Of([.. rows.Select(row => row.Value)], design, factors);
        if (fit.Status is MixedStatus.NoVariation or MixedStatus.NotConverged)
        {
            return null;
        }

        var contrast = fit.Contrast([0, 1]);
        return new(
            contrast is { StandardError: { } error, DegreesOfFreedom: { } degrees } ? new TEstimate(contrast.Estimate, error, degrees, whole, unit, Methods.MixedSites) : null,
            rows.Length,
            Variance("site"),
            Variance("treatment"),
            Variance("block"),
            fit.ResidualVariance,
            fit.IsSingular);

        void Add(string name, Func<Row, object> key)
        {
            var levels = new Dictionary<object, int>();
            int[] factor = [.. rows.Select(row => levels.TryGetValue(key(row), out var known) ? known : levels[key(row)] = levels.Count)];
            if (levels.Count > 1 && levels.Count < rows.Length && !factors.Exists(other => other.SequenceEqual(factor)))
            {
                names.Add(name);
                factors.Add(factor);
            }
        }

        double? Variance(string name) => names.IndexOf(name) is >= 0 and var index ? fit.VarianceComponents[index] : null;
    }

    /// <summary>The strips of a site with one of two treatments.</summary>
    public static IEnumerable<SiteStrip> StripsOf(ComparedPair pair, SiteMeasure site) => site.Strips.Where(strip => pair.Has(strip.Treatment));

    private sealed record Row(double Value, string Site, string Block, bool IsTreated);
}
