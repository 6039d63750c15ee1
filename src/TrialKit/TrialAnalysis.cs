using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Analysis;
using TrialKit.Comparison;
using TrialKit.Emergence;
using TrialKit.Money;
using TrialKit.Results;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using TrialKit.Trials;

namespace TrialKit;

/// <summary>The whole outcome of one trial: what each strip came to, how the treatments compare, and what to doubt.</summary>
public sealed record TrialAnalysis
{
    private TrialAnalysis(StripTrial trial, StripSummaries strips, TrialHeat? heat, TrialForecast? forecast, ImmutableArray<MeasureComparison> measures, EmergenceReview? emergence, ImmutableArray<Finding> findings)
    {
        (Trial, Strips, Heat, Forecast, Measures, Findings) = (trial, strips, heat, forecast, measures, findings);
        Emergence = emergence;
        (Starter, Money) = (StarterReview.Of(trial), TrialMoney.Of(trial, measures));
        Flows = Starter is { } starter && trial.Planting.Speed is { } speed ? StreamFlow.Of(starter, new(speed, Pressure: null, Outlets: [])) : [];
        Spots = TrialSpots.Of(trial, strips, measures);
        Counts = TrialCounts.Of(trial, strips, measures);
        Methods = [.. AnalysisMethods.Of(strips, heat, forecast, measures, Spots, Counts), .. AnalysisMethods.Of(Starter, Flows, Money), .. emergence?.Methods ?? []];
    }

    /// <summary>The trial that was analysed.</summary>
    public StripTrial Trial { get; }

    /// <summary>What each strip's records came to.</summary>
    public StripSummaries Strips { get; }

    /// <summary>Heat from planting; null without temperatures.</summary>
    public TrialHeat? Heat { get; }

    /// <summary>The emergence that heat foretold, against what was seen; null without temperatures, or without a need known for the crop.</summary>
    public TrialForecast? Forecast { get; }

    /// <summary>Each measure with its comparison, in a fixed order.</summary>
    public ImmutableArray<MeasureComparison> Measures { get; }

    /// <summary>The emergence as a reviewer would want it; null without visits.</summary>
    public EmergenceReview? Emergence { get; }

    /// <summary>How measures taken at several spots vary between strips and between spots.</summary>
    public ImmutableArray<SpotVariation> Spots { get; }

    /// <summary>Comparisons of counts beside those of their measures.</summary>
    public ImmutableArray<CountComparison> Counts { get; }

    /// <summary>What is put near the seed; null when no treatment names a product.</summary>
    public StarterReview? Starter { get; }

    /// <summary>The flow of each liquid put near the seed; empty when there is none or the planter's speed is not on record.</summary>
    public ImmutableArray<StreamFlow> Flows { get; }

    /// <summary>What each difference costs and is worth; empty when the trial states neither a price nor a cost.</summary>
    public ImmutableArray<PairBudget> Money { get; }

    /// <summary>What to doubt about the trial as a whole and about single strips; what concerns one measure stands with the measure.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>The procedures used, each once.</summary>
    public ImmutableArray<Method> Methods { get; }

    /// <summary>Every finding: the trial's first, then of what is put near the seed, measure by measure, of spots and counts, and of money.</summary>
    public IEnumerable<Finding> AllFindings => Findings
        .Concat(Starter?.Findings ?? [])
        .Concat(Measures.SelectMany(measure => measure.Findings))
        .Concat(Spots.SelectMany(spots => spots.Findings))
        .Concat(Counts.SelectMany(counts => counts.Findings))
        .Concat(Money.SelectMany(budget => budget.Findings));

    /// <summary>The treatments compared with each other, in the order of the trial.</summary>
    public IEnumerable<ComparedPair> ComparedPairs => Measures.SelectMany(measure => measure.Contrasts).Select(contrast => contrast.Pair).Distinct();

    /// <summary>What was found between two treatments, measure by measure.</summary>
    public IEnumerable<(MeasureComparison Measure, Contrast Contrast)> ContrastsOf(ComparedPair pair) =>
        from measure in Measures
        from contrast in measure.Contrasts
        where contrast.Pair == pair
        select (measure, contrast);

    /// <summary>Analyses a trial.</summary>
    /// <param name="trial">The trial.</param>
    public static TrialAnalysis Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var strips = StripSummaries.Of(trial);
        var measures = Concurrently.Map([.. TrialMeasures.Of(trial, strips)], values => StripComparison.Compare(values, trial));
        var pairs = measures.SelectMany(measure => measure.Contrasts).Select(contrast => contrast.Pair).Distinct().Select(pair => (pair.Treatment, pair.Baseline));
        var emergence = EmergenceReview.Of(trial, strips.Emergence, pairs);
        var forecast = TrialForecast.Of(trial, strips.Emergence);
        var heat = TrialHeat.Of(trial);
        return new(trial, strips, heat, forecast, measures, emergence, [.. LayoutFindings.Of(trial), .. Tests(measures, trial.Design), .. heat?.FindingsOf(trial, strips.Emergence) ?? [], .. forecast?.Findings ?? [], .. strips.Findings, .. emergence?.Findings ?? []]);
    }

    private static IEnumerable<Finding> Tests(ImmutableArray<MeasureComparison> measures, Design design)
    {
        var tests = measures.Sum(measure => measure.Contrasts.Count(contrast => contrast.P is not null));
        var families = measures.Count(measure => measure.Contrasts.Any(contrast => contrast.P is not null));
        if (tests > 1)
        {
            yield return new("tests-run", FindingWeight.Note, tests == families
                ? string.Create(CultureInfo.InvariantCulture, $"{tests} comparisons were tested at {design.Level.Alpha:0.########}; with no true difference anywhere about {tests * design.Level.Alpha:0.#} of them would be called different by chance.")
                : string.Create(CultureInfo.InvariantCulture, $"{tests} comparisons of {families} measures were tested, those of one measure together at {design.Level.Alpha:0.########}; with no true difference anywhere about {families * design.Level.Alpha:0.#} of the measures would show one by chance."));
        }
    }
}
