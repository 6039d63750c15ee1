using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Comparison;
using TrialKit.Emergence;
using TrialKit.Numerics;
using TrialKit.Results;
using TrialKit.Stand;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Analysis;

/// <summary>The list of measures of a trial, each with one value a strip, in the units that the trial prints.</summary>
/// <remarks>Ids and their order are stable: files and expectations rest on them.</remarks>
internal static class TrialMeasures
{
    public static ImmutableArray<StripMeasure> Of(StripTrial trial, StripSummaries summaries) =>
        [.. Stand(trial, summaries.Stands)
            .Concat(Emergence(trial, summaries.Emergence))
            .Concat(Evenness(trial, summaries))
            .Concat(Spacing(trial, summaries.Spacings))
            .Concat(Depth(trial, summaries.Depths))
            .Concat(Yield(trial, summaries))
            .Concat(Own(trial))
            .Where(measure => measure.Values.Any(entry => entry.Value is not null))];

    private static IEnumerable<StripMeasure> Stand(StripTrial trial, ImmutableArray<StripStand> stands)
    {
        var us = trial.Units == UnitSystem.Us;
        var byStrip = stands.ToDictionary(stand => stand.Strip.Name, Identifier.Comparer);
        yield return Measure(trial, new("stand", "Stand", us ? Unit.PlantsPerAcre : Unit.PlantsPerHectare, MeasureKind.Stand, Better.Unsaid, IsHeadline: true), byStrip, stand => us ? stand.Mean.PerAcre : stand.Mean.PerHectare);
        yield return Measure(trial, new("stand-share", "Stand, share of seeds dropped", Unit.Percent, MeasureKind.Share, Better.Higher, IsHeadline: false), byStrip, stand => stand.PercentOfSeeds);
    }

    private static IEnumerable<StripMeasure> Emergence(StripTrial trial, ImmutableArray<StripEmergence> emergence)
    {
        var byStrip = emergence.ToDictionary(strip => strip.Strip.Name, Identifier.Comparer);
        var heatUnit = trial.Units == UnitSystem.Us ? Unit.FahrenheitDays : Unit.CelsiusDays;
        yield return Share("emergence-share", "Seeds that came up", isHeadline: false, strip => strip.FinalPercent);
        yield return Time("t10", "Time to 10 % up", isHeadline: false, strip => strip.T10?.Days);
        yield return Time("t50", "Time to 50 % up", isHeadline: true, strip => strip.T50?.Days);
        yield return Time("t90", "Time to 90 % up", isHeadline: false, strip => strip.T90?.Days);
        yield return Time("t50-sown", "Time to 50 % of seeds up", isHeadline: false, strip => strip.T50OfSown?.Days);
        yield return Time("spread", "Spread, 10 % to 90 % up", isHeadline: true, strip => strip.Spread?.Days);
        yield return Heat("heat-t10", "Heat to 10 % up", isHeadline: false, strip => strip.T10?.Heat?.In(trial.Units));
        yield return Heat("heat-t50", "Heat to 50 % up", isHeadline: true, strip => strip.T50?.Heat?.In(trial.Units));
        yield return Heat("heat-t90", "Heat to 90 % up", isHeadline: false, strip => strip.T90?.Heat?.In(trial.Units));
        yield return Heat("heat-spread", "Heat, 10 % to 90 % up", isHeadline: false, strip => strip.Spread?.Heat?.In(trial.Units));
        yield return Share("up-24h", "Up within 24 h of first", isHeadline: true, strip => strip.PercentWithin24Hours);
        yield return Share("up-48h", "Up within 48 h of first", isHeadline: true, strip => strip.PercentWithin48Hours);

        StripMeasure Time(string id, string label, bool isHeadline, Func<StripEmergence, double?> value) =>
            Measure(trial, new(id, label, Unit.Days, MeasureKind.Time, Better.Lower, isHeadline), byStrip, value);

        StripMeasure Heat(string id, string label, bool isHeadline, Func<StripEmergence, double?> value) =>
            Measure(trial, new(id, label, heatUnit, MeasureKind.Heat, Better.Lower, isHeadline), byStrip, value);

        StripMeasure Share(string id, string label, bool isHeadline, Func<StripEmergence, double?> value) =>
            Measure(trial, new(id, label, Unit.Percent, MeasureKind.Share, Better.Higher, isHeadline), byStrip, value);
    }

    private static IEnumerable<StripMeasure> Evenness(StripTrial trial, StripSummaries summaries)
    {
        var heatUnit = trial.Units == UnitSystem.Us ? Unit.FahrenheitDays : Unit.CelsiusDays;
        var lags = summaries.Evenness.ToDictionary(strip => strip.Strip.Name, Identifier.Comparer);
        var stages = summaries.Stages.ToDictionary(strip => strip.Strip.Name, Identifier.Comparer);
        yield return Measure(trial, new("lag-mean", "Lag behind first plant, mean", Unit.Days, MeasureKind.Time, Better.Lower, IsHeadline: false), lags, strip => strip.MeanLag);
        yield return Measure(trial, new("lag-sd", "Lag behind first plant, SD", Unit.Days, MeasureKind.Time, Better.Lower, IsHeadline: false), lags, strip => strip.StandardDeviation);
        yield return Measure(trial, new("late-3d", "Over 3 days behind first", Unit.Percent, MeasureKind.Share, Better.Lower, IsHeadline: false), lags, strip => strip.PercentLate);
        yield return Measure(trial, new("stage-behind", "One leaf or more behind", Unit.Percent, MeasureKind.Share, Better.Lower, IsHeadline: false), stages, strip => strip.PercentOneBehind);
        yield return Measure(trial, new("stage-lag", "Leaf stage lag, mean", heatUnit, MeasureKind.Heat, Better.Lower, IsHeadline: false), stages, strip => strip.MeanHeatBehind?.In(trial.Units));
    }

    private static IEnumerable<StripMeasure> Spacing(StripTrial trial, ImmutableArray<StripSpacing> spacings)
    {
        var (unit, scale) = ShortLength(trial);
        var byStrip = spacings.ToDictionary(spacing => spacing.Strip.Name, Identifier.Comparer);
        yield return Of("spacing-mean", "Plant spacing, mean", unit, MeasureKind.Length, Better.Unsaid, isHeadline: false, spacing => spacing.Mean?.As(scale));
        yield return Of("spacing-sd", "Plant spacing, SD", unit, MeasureKind.Length, Better.Lower, isHeadline: true, spacing => spacing.StandardDeviation?.As(scale));
        yield return Of("spacing-cv", "Plant spacing, CV", Unit.Percent, MeasureKind.Share, Better.Lower, isHeadline: false, spacing => spacing.CoefficientOfVariation);
        yield return Of("spacing-multiples", "Spacings that are doubles", Unit.Percent, MeasureKind.Share, Better.Lower, isHeadline: false, spacing => spacing.Classes?.Multiples);
        yield return Of("spacing-single", "Spacings that are single", Unit.Percent, MeasureKind.Share, Better.Higher, isHeadline: false, spacing => spacing.Classes?.Singles);
        yield return Of("spacing-missed", "Spacings that are skips", Unit.Percent, MeasureKind.Share, Better.Lower, isHeadline: false, spacing => spacing.Classes?.Missed);

        StripMeasure Of(string id, string label, Unit unit, MeasureKind kind, Better better, bool isHeadline, Func<StripSpacing, double?> value) =>
            Measure(trial, new(id, label, unit, kind, better, isHeadline), byStrip, value);
    }

    private static IEnumerable<StripMeasure> Depth(StripTrial trial, ImmutableArray<StripDepth> depths)
    {
        var (unit, scale) = ShortLength(trial);
        var byStrip = depths.ToDictionary(depth => depth.Strip.Name, Identifier.Comparer);
        yield return Measure(trial, new("depth", "Seed depth, mean", unit, MeasureKind.Length, Better.Unsaid, IsHeadline: true), byStrip, depth => depth.Mean.As(scale));
        yield return Measure(trial, new("depth-sd", "Seed depth, SD", unit, MeasureKind.Length, Better.Lower, IsHeadline: false), byStrip, depth => depth.StandardDeviation?.As(scale));
        yield return Measure(trial, new("depth-near", "Seed within 1/4 in of target", Unit.Percent, MeasureKind.Share, Better.Higher, IsHeadline: false), byStrip, depth => depth.PercentNearTarget);
    }

    private static IEnumerable<StripMeasure> Yield(StripTrial trial, StripSummaries summaries)
    {
        // A crop without a bushel is weighed in tonnes whatever the trial prints.
        var units = trial.Crop.Bushel is null ? UnitSystem.Metric : trial.Units;
        var byStrip = summaries.Yields.ToDictionary(yield => yield.Strip.Name, Identifier.Comparer);
        yield return Measure(trial, new("yield", "Yield", units == UnitSystem.Us ? Unit.BushelsPerAcre : Unit.TonnesPerHectare, MeasureKind.Yield, Better.Higher, IsHeadline: true), byStrip, strip => strip.In(units));
    }

    /// <summary>The trial's own measures: the mean over the spots of a strip.</summary>
    private static IEnumerable<StripMeasure> Own(StripTrial trial)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var values in trial.Measurements.GroupBy(value => value.Measure, Identifier.Comparer))
        {
            var byStrip = values
                .GroupBy(value => value.Strip.Name, Identifier.Comparer)
                .ToDictionary(strip => strip.Key, strip => strip.Select(value => value.Value).ToArray(), Identifier.Comparer);
            var measure = new Measure(Unused($"own-{Slug(values.Key)}", taken), values.Key.Trim(), new Unit(values.First().Unit?.Trim() ?? ""), MeasureKind.Other, Better.Unsaid, IsHeadline: true);
            yield return Measure(trial, measure, byStrip, strip => Summary.Mean(strip));
        }
    }

    private static StripMeasure Measure<T>(StripTrial trial, Measure measure, Dictionary<string, T> byStrip, Func<T, double?> value) =>
        new(measure, [.. trial.Strips.Select(strip => new StripValue(strip, byStrip.TryGetValue(strip.Name, out var summary) ? value(summary) : null))]);

    private static (Unit Unit, UnitsNet.Units.LengthUnit Scale) ShortLength(StripTrial trial) => trial.Units == UnitSystem.Us
        ? (Unit.Inches, UnitsNet.Units.LengthUnit.Inch)
        : (Unit.Centimetres, UnitsNet.Units.LengthUnit.Centimeter);

    // Names that differ only in signs give one slug: the later ones are numbered.
    private static string Unused(string id, HashSet<string> taken)
    {
        var free = id;
        for (var number = 2; !taken.Add(free); number++)
        {
            free = string.Create(CultureInfo.InvariantCulture, $"{id}-{number}");
        }

        return free;
    }

    private static string Slug(string name) =>
        string.Concat(name.Trim().Select(letter => char.IsLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : '-'));
}
