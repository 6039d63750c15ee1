using System.Collections.Immutable;
using TrialKit.Comparison;
using TrialKit.Comparison.Sites;
using TrialKit.Ingest.Messages;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Season;

/// <summary>Puts the rows of a season's tables back into one site per trial.</summary>
internal sealed class SeasonSites(IReadOnlySet<string>? wanted)
{
    private readonly OrderedDictionary<string, SiteDraft> sites = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> trialOfFingerprint = new(StringComparer.Ordinal);
    private readonly OrderedDictionary<string, bool> measures = new(StringComparer.Ordinal);

    /// <summary>Ids of the measures met.</summary>
    public IEnumerable<string> Measures => measures.Keys;

    /// <summary>Takes a row of the table of strips.</summary>
    public void AddStrip(SeasonCells cells)
    {
        if (MeasureOf(cells) is not { } draft)
        {
            return;
        }

        var (strip, block, treatment) = (cells.Text("strip"), cells.Text("block"), cells.Text("treatment"));
        var (value, leftOut) = (cells.OptionalNumber("value"), cells.OptionalText("left_out"));
        if (!draft.StripNames.Add(strip))
        {
            cells.Fault(SeasonProblems.Twice(cells.At("strip"), cells.Text("trial"), draft.Measure.Id));
        }

        // Other engines may write an empty text for a missing one.
        if (cells.IsSound && value is { } known && string.IsNullOrEmpty(leftOut))
        {
            draft.Strips.Add(new(block, treatment, known));
        }
    }

    /// <summary>Takes a row of the table of comparisons.</summary>
    public void AddContrast(SeasonCells cells)
    {
        if (MeasureOf(cells) is not { } draft)
        {
            return;
        }

        var pair = new ComparedPair(Treatment(cells, "treatment"), Treatment(cells, "baseline"));
        var (difference, error, df) = (cells.Number("difference"), cells.OptionalAboveZero("standard_error"), cells.OptionalAboveZero("df"));
        var (replicates, judgedBy) = (cells.OptionalWhole("replicates", least: 1), cells.Text("judged_by"));
        cells.Require(error is null == df is null && error is null == replicates is null, "standard_error", error, "a standard error with its degrees of freedom and replicates was expected, or none of the three");
        if (draft.Contrasts.Exists(other => other.Pair.IsOf(pair.Treatment, pair.Baseline)))
        {
            cells.Fault(SeasonProblems.Twice(cells.At("treatment"), cells.Text("trial"), draft.Measure.Id));
        }

        if (cells.IsSound)
        {
            var method = new Method(judgedBy, "the trial's own analysis, as the season table states it", "docs/guide/season-table.md");
            draft.Contrasts.Add(new(pair, error is { } known ? new TEstimate(difference, known, df!.Value, replicates!.Value, draft.Measure.Unit, method) : null));
        }
    }

    /// <summary>The sites, in the order they were met.</summary>
    public ImmutableArray<PooledSite> ToSites() =>
        [.. sites.Select(site => new PooledSite(
            site.Key,
            site.Value.Identity,
            [.. site.Value.Measures.Values.Select(draft => new SiteMeasure(draft.Measure, [.. draft.Contrasts], [.. draft.Strips]))]))];

    private MeasureDraft? MeasureOf(SeasonCells cells)
    {
        var id = cells.Text("measure");
        measures[id] = true;
        if (wanted?.Contains(id) == false || SiteOf(cells) is not { } site)
        {
            return null;
        }

        if (site.Measures.TryGetValue(id, out var known))
        {
            return known;
        }

        var measure = new Measure(
            id,
            cells.Text("measure_label"),
            new Unit(cells.Text("unit")),
            cells.Choice("kind", SeasonNames.Kinds),
            cells.Choice("better", SeasonNames.Betters),
            cells.YesNo("headline"));
        return cells.IsSound ? site.Measures[id] = new(measure) : null;
    }

    private SiteDraft? SiteOf(SeasonCells cells)
    {
        var (trial, identity, fingerprint) = (cells.Text("trial"), Identity(cells), cells.Text("fingerprint"));
        if (!cells.IsSound)
        {
            return null;
        }

        if (!sites.TryGetValue(trial, out var site))
        {
            if (!trialOfFingerprint.TryAdd(fingerprint, trial))
            {
                cells.Warn(SeasonProblems.SameFiles(cells.At("fingerprint"), trial, trialOfFingerprint[fingerprint]));
            }

            return sites[trial] = new(identity, fingerprint);
        }

        if (site.Identity != identity || site.Fingerprint != fingerprint)
        {
            cells.Fault(SeasonProblems.OtherTrial(cells.At("trial"), trial));
            return null;
        }

        return site;
    }

    private static TrialIdentity Identity(SeasonCells cells)
    {
        var alpha = cells.Number("alpha");
        cells.Require(alpha is > 0 and < 0.5 || !cells.IsSound, "alpha", alpha, "a number above 0 and below 0.5 was expected");
        return new()
        {
            Title = cells.Text("title"),
            Site = cells.OptionalText("site"),
            Latitude = cells.OptionalNumber("latitude"),
            Longitude = cells.OptionalNumber("longitude"),
            Planted = cells.Date("planted"),
            Crop = cells.Text("crop"),
            Units = cells.Choice("units", SeasonNames.Units),
            Layout = cells.Choice("layout", SeasonNames.Layouts),
            Blocks = cells.Whole("blocks", least: 0),
            Treatments = cells.Whole("treatments", least: 0),
            LeftOut = cells.Whole("strips_left_out", least: 0),
            Control = cells.OptionalText("control"),
            Level = cells.IsSound ? ConfidenceLevel.FromAlpha(alpha) : default,
            HeatMethod = cells.Text("heat_method"),
        };
    }

    private static Treatment Treatment(SeasonCells cells, string column) => new(cells.Text(column), cells.Text(column + "_label"), Cost: null, []);

    private sealed record SiteDraft(TrialIdentity Identity, string Fingerprint)
    {
        public OrderedDictionary<string, MeasureDraft> Measures { get; } = new(StringComparer.Ordinal);
    }

    private sealed record MeasureDraft(Measure Measure)
    {
        public List<SiteContrast> Contrasts { get; } = [];

        public List<SiteStrip> Strips { get; } = [];

        public HashSet<string> StripNames { get; } = new(StringComparer.Ordinal);
    }
}
