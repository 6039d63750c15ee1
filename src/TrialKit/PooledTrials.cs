using System.Collections.Immutable;
using TrialKit.Comparison;
using TrialKit.Comparison.Sites;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit;

/// <summary>The same comparison at several sites or in several years, put together.</summary>
public sealed record PooledTrials
{
    private PooledTrials(ImmutableArray<PooledSite> sites, ConfidenceLevel level, ImmutableArray<PooledComparison> comparisons, ImmutableArray<Finding> findings) =>
        (Sites, Level, Comparisons, Findings) = (sites, level, comparisons, findings);

    /// <summary>The sites, in the order given.</summary>
    public ImmutableArray<PooledSite> Sites { get; }

    /// <summary>The level of intervals and verdicts: that of the first site.</summary>
    public ConfidenceLevel Level { get; }

    /// <summary>Each comparison that two sites or more can be pooled for: pair by pair, measure by measure.</summary>
    public ImmutableArray<PooledComparison> Comparisons { get; }

    /// <summary>What to doubt about the pooling as a whole.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>Every finding, the whole's first.</summary>
    public IEnumerable<Finding> AllFindings => Findings.Concat(Comparisons.SelectMany(comparison => comparison.Findings));

    /// <summary>The pairs of treatments, in the order of the first site that has them.</summary>
    public IEnumerable<ComparedPair> ComparedPairs => Comparisons.Select(comparison => comparison.Pair).Distinct();

    /// <summary>The procedures used, each once.</summary>
    public IEnumerable<Method> Methods => Comparisons
        .SelectMany(comparison => new[] { comparison.Reml.Estimate.Method, comparison.Moments.Estimate.Method, comparison.Common.Estimate.Method, comparison.Mixed?.Estimate?.Method })
        .OfType<Method>()
        .Distinct();

    /// <summary>Why trials cannot be put together, each naming the site; none when they can.</summary>
    /// <param name="sites">The trials.</param>
    public static IEnumerable<string> Mismatches(IReadOnlyList<PooledSite> sites)
    {
        ArgumentNullException.ThrowIfNull(sites);
        if (sites.Count < 2)
        {
            yield return $"{(sites.Count == 0 ? "no trial" : $"only {sites[0].Name}")} was given; two trials or more were expected";
            yield break;
        }

        var first = sites[0];
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var site in sites)
        {
            if (!names.Add(site.Name))
            {
                yield return $"{site.Name}: the name is there twice; a name of its own was expected for each trial";
            }

            var (trial, like) = (site.Trial, first.Trial);
            if (trial.Units != like.Units)
            {
                yield return $"{site.Name}: prints {Name(trial.Units)} units where {first.Name} prints {Name(like.Units)}; one system was expected in the trial.toml of all";
            }

            if (!Identifier.Same(trial.Control, like.Control))
            {
                yield return $"{site.Name}: the control is {Control(trial)} where {first.Name} has {Control(like)}; one name was expected for it";
            }

            foreach (var measure in site.Measures.Select(measure => measure.Measure))
            {
                var earlier = sites.TakeWhile(other => other != site).SelectMany(other => other.Measures.Select(found => (other.Name, found.Measure))).FirstOrDefault(other => other.Measure.Id == measure.Id);
                if (trial.Units == like.Units && earlier.Measure is { } before && before.Unit != measure.Unit)
                {
                    yield return $"{site.Name}: {measure.Label} is in {Name(measure.Unit)} where {earlier.Name} has {Name(before.Unit)}; one unit was expected";
                }
            }
        }
    }

    /// <summary>Puts trials together.</summary>
    /// <param name="sites">Two trials or more that <see cref="Mismatches"/> finds nothing against.</param>
    /// <exception cref="ArgumentException">They cannot be put together; the message says why.</exception>
    public static PooledTrials Of(IReadOnlyList<PooledSite> sites)
    {
        var mismatches = Mismatches(sites).ToArray();
        if (mismatches.Length > 0)
        {
            throw new ArgumentException("The trials cannot be put together: " + string.Join("; ", mismatches), nameof(sites));
        }

        var level = sites[0].Trial.Level;
        var comparisons =
            from pair in Pairs(sites)
            from measure in Measures(sites)
            let having = Having(sites, measure)
            let pooled = SitePooling.Of(measure, pair, having, level)
            where pooled is not null
            select pooled;
        return new([.. sites], level, [.. comparisons], [.. Doubts(sites)]);
    }

    // Pairs that differ in nothing but which treatment comes first are one.
    private static List<ComparedPair> Pairs(IReadOnlyList<PooledSite> sites)
    {
        var pairs = new List<ComparedPair>();
        foreach (var pair in sites.SelectMany(site => site.Measures.SelectMany(measure => measure.Contrasts).Select(contrast => contrast.Pair).Distinct()))
        {
            if (!pairs.Exists(known => known.IsOf(pair.Treatment, pair.Baseline) || known.IsOf(pair.Baseline, pair.Treatment)))
            {
                pairs.Add(pair);
            }
        }

        return pairs;
    }

    private static IEnumerable<Measure> Measures(IReadOnlyList<PooledSite> sites) =>
        sites.SelectMany(site => site.Measures.Select(measure => measure.Measure)).DistinctBy(measure => measure.Id, StringComparer.Ordinal);

    private static (string Site, SiteMeasure Measure)[] Having(IReadOnlyList<PooledSite> sites, Measure measure) =>
        [.. from site in sites
            from own in site.Measures
            where own.Measure.Id == measure.Id
            select (site.Name, own)];

    private static IEnumerable<Finding> Doubts(IReadOnlyList<PooledSite> sites)
    {
        var first = sites[0];
        foreach (var site in sites.Skip(1))
        {
            if (!Identifier.Same(site.Trial.Crop, first.Trial.Crop))
            {
                yield return new("pool-other-crop", FindingWeight.Serious, $"{site.Name} grew {site.Trial.Crop} where {first.Name} grew {first.Trial.Crop}; a mean over crops may mean nothing.", site.Name);
            }

            if (site.Trial.Level != first.Trial.Level)
            {
                yield return new("pool-other-level", FindingWeight.Note, $"{site.Name} was judged at {site.Trial.Level} confidence on its own; here {first.Trial.Level}, that of {first.Name}, stands for all.", site.Name);
            }

            if (site.Trial.HeatMethod != first.Trial.HeatMethod)
            {
                yield return new("pool-other-heat", FindingWeight.Serious, $"{site.Name} counts heat by {site.Trial.HeatMethod} where {first.Name} counts by {first.Trial.HeatMethod}; do not read the pooled heat.", site.Name);
            }
        }
    }

    private static string Name(UnitSystem units) => units == UnitSystem.Us ? "us" : "metric";

    private static string Name(Unit unit) => unit.Symbol.Length == 0 ? "no unit" : unit.Symbol;

    private static string Control(TrialIdentity trial) => trial.Control is { } control ? $"'{control}'" : "not named";
}
