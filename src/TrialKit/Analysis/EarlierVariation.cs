using TrialKit.Numerics;
using TrialKit.Numerics.Linear;
using TrialKit.Trials;

namespace TrialKit.Analysis;

/// <summary>How much strips and spots varied in a trial that has been analysed, for planning the next.</summary>
/// <param name="Measure">The measure's id.</param>
/// <param name="Cv">Standard deviation of a strip within its block, in percent of the mean.</param>
/// <param name="DegreesOfFreedom">How much it rests on.</param>
/// <param name="StripVariance">Variance between strips beyond that of their spots, in squared percent of the mean; null where spots are not known.</param>
/// <param name="SpotVariance">Variance between spots of a strip, in squared percent of the mean; null where spots are not known.</param>
public sealed record EarlierVariation(string Measure, double Cv, int DegreesOfFreedom, double? StripVariance, double? SpotVariance)
{
    private const double Percent = 100;
    private const string Stand = "stand";

    /// <summary>The variation of one measure; null when the trial cannot tell it.</summary>
    /// <param name="analysis">The trial.</param>
    /// <param name="measure">The measure's id, such as <c>stand</c> or <c>yield</c>.</param>
    public static EarlierVariation? Of(TrialAnalysis analysis, string measure)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentException.ThrowIfNullOrWhiteSpace(measure);
        if (analysis.Measures.FirstOrDefault(candidate => Identifier.Same(candidate.Measure.Id, measure)) is not { } found)
        {
            return null;
        }

        var entries = found.Values.Analysed.ToArray();
        var blocks = entries.Select(entry => entry.Entry.Strip.Block.Trim()).Distinct(Identifier.Comparer).ToList();
        var treatments = entries.Select(entry => entry.Entry.Strip.Treatment.Name).Distinct(Identifier.Comparer).ToList();
        if (blocks.Count < 2 || treatments.Count < 2)
        {
            return null;
        }

        var anova = BlockAnova.Of(
            [.. entries.Select(entry => entry.Value)],
            [.. entries.Select(entry => Place(blocks, entry.Entry.Strip.Block.Trim()))],
            [.. entries.Select(entry => Place(treatments, entry.Entry.Strip.Treatment.Name))]);
        if (anova.Error.DegreesOfFreedom < 1 || anova.CoefficientOfVariation is not { } cv || !(cv > 0))
        {
            return null;
        }

        var (strip, spot) = Identifier.Same(measure, Stand) ? Components(analysis, blocks, treatments) : (null, null);
        return new(found.Measure.Id, cv, anova.Error.DegreesOfFreedom, strip, spot);
    }

    /// <summary>Several trials as one: variances are averaged with their degrees of freedom as weights.</summary>
    /// <param name="trials">Variations of one measure; may be empty.</param>
    /// <returns>Null when there are none; strip and spot variances only where each trial has them.</returns>
    public static EarlierVariation? Pool(IReadOnlyList<EarlierVariation> trials)
    {
        ArgumentNullException.ThrowIfNull(trials);
        if (trials.Count == 0)
        {
            return null;
        }

        var df = trials.Sum(trial => trial.DegreesOfFreedom);
        return new(
            trials[0].Measure,
            Math.Sqrt(trials.Sum(trial => trial.DegreesOfFreedom * trial.Cv * trial.Cv) / df),
            df,
            Mean(trial => trial.StripVariance),
            Mean(trial => trial.SpotVariance));

        double? Mean(Func<EarlierVariation, double?> of) => trials.All(trial => of(trial) is not null) ? trials.Sum(trial => trial.DegreesOfFreedom * of(trial)!.Value) / df : null;
    }

    private static (double? Strip, double? Spot) Components(TrialAnalysis analysis, List<string> blocks, List<string> treatments)
    {
        var stands = analysis.Strips.Stands.Where(stand => stand.Strip.IsAnalysed).ToArray();
        double[] values = [.. stands.SelectMany(stand => stand.Spots.Select(spot => spot.Density.PerHectare))];
        if (stands.All(stand => stand.Spots.Length < 2))
        {
            return (null, null);
        }

        var split = Subsampling.Of(
            values,
            [.. stands.SelectMany((stand, index) => stand.Spots.Select(_ => index))],
            [.. stands.Select(stand => Place(blocks, stand.Strip.Block.Trim()))],
            [.. stands.Select(stand => Place(treatments, stand.Strip.Treatment.Name))]);
        var scale = Percent / Summary.Mean(values);
        return (split.StripVariance * scale * scale, split.SpotVariance * scale * scale);
    }

    private static int Place(List<string> names, string name) => names.FindIndex(known => Identifier.Same(known, name));
}
