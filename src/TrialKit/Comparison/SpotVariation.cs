using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Linear;
using TrialKit.Numerics.Power;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>How a measure varies between strips and between the spots of a strip, and what more of either would bring.</summary>
/// <param name="Measure">What was measured.</param>
/// <param name="Strips">Strips that took part.</param>
/// <param name="StripsPerTreatment">Pairs or blocks.</param>
/// <param name="SpotsPerStrip">Spots in a strip: the harmonic mean where strips differ.</param>
/// <param name="HasEqualSpots">Whether each strip has as many spots as the others.</param>
/// <param name="SpotVariance">Between the spots of a strip, in the square of the unit.</param>
/// <param name="SpotDegrees">Its degrees of freedom.</param>
/// <param name="StripVariance">Between strips of a treatment within a block, beyond what their spots make them differ; 0 where the estimate was negative.</param>
/// <param name="StripDegrees">The degrees of freedom between strips.</param>
/// <param name="WasNegative">Whether the estimate was negative: strips differ no more than their spots make them.</param>
/// <param name="OverSpots">F as it comes out when each spot is taken for a replicate: wrong, and shown to teach why; null with unequal spots.</param>
/// <param name="OverStrips">F on strips, the test that holds.</param>
/// <param name="Plans">This trial's own numbers first, as its verdicts have them, then what more spots and more strips would bring; empty where nothing was tested.</param>
/// <param name="Findings">What to doubt.</param>
public sealed record SpotVariation(
    Measure Measure,
    int Strips,
    int StripsPerTreatment,
    double SpotsPerStrip,
    bool HasEqualSpots,
    double SpotVariance,
    int SpotDegrees,
    double StripVariance,
    int StripDegrees,
    bool WasNegative,
    FTest? OverSpots,
    FTest? OverStrips,
    ImmutableArray<SpotPlan> Plans,
    ImmutableArray<Finding> Findings)
{
    /// <summary>The procedure.</summary>
    public static Method Method => Methods.Subsampling;

    /// <summary>Spots in a strip that bring the most for the money; null when strips do not vary, so that no number is best.</summary>
    /// <param name="stripCostInSpots">What one more strip costs, counted in spots, above 0.</param>
    /// <remarks>sqrt(cost ratio x spot variance / strip variance), Cochran 1977, Sampling Techniques, section 10.6.</remarks>
    public double? BestSpots(double stripCostInSpots) => SpotAllocation.Optimum(StripVariance, SpotVariance, stripCostInSpots, 1);

    /// <summary>The variation of one measure; null when no strip has two spots, or strips leave no degree of freedom.</summary>
    /// <param name="spots">The measure at each spot.</param>
    /// <param name="comparison">The measure compared strip by strip: this trial's own error and the level of each comparison are taken from it.</param>
    /// <param name="trial">The trial.</param>
    public static SpotVariation? Of(SpotMeasure spots, MeasureComparison comparison, StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(spots);
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(trial);
        var byStrip = spots.Values.ToLookup(value => value.Strip.Name, Identifier.Comparer);
        var values = new StripMeasure(spots.Measure, [.. trial.Strips.Select(strip => new StripValue(strip, byStrip[strip.Name].Select(value => (double?)value.Value).FirstOrDefault()))]);
        var joined = JoinedStrips.Of(values, trial.Treatments, trial.Design.Control).Replicated(trial.Design.Control);
        if (joined.Blocks.Length < 2 || joined.Treatments.Length < 2 || joined.Entries.All(entry => byStrip[entry.Strip.Name].Count() < 2))
        {
            return null;
        }

        var used = joined.Entries.SelectMany((entry, index) => byStrip[entry.Strip.Name].Select(value => (value.Value, Strip: index))).ToArray();
        var analysis = Subsampling.Of(
            [.. used.Select(spot => spot.Value)],
            [.. used.Select(spot => spot.Strip)],
            [.. joined.Entries.Select(entry => joined.BlockIndex(entry.Strip))],
            [.. joined.Entries.Select(entry => joined.TreatmentIndex(entry.Strip))]);
        return analysis is { SpotVariance: { } spot, StripVariance: { } strip } ? Of(spots.Measure, joined, analysis, spot, strip, comparison) : null;
    }

    private static SpotVariation Of(Measure measure, JoinedStrips joined, Subsampling analysis, double spot, double strip, MeasureComparison comparison)
    {
        var treatments = analysis.Strips.Treatments;
        return new(
            measure,
            joined.Entries.Length,
            joined.Blocks.Length,
            analysis.SpotsPerStrip,
            analysis.HasEqualSpots,
            spot,
            analysis.SpotDegreesOfFreedom,
            strip,
            analysis.Strips.Error.DegreesOfFreedom,
            analysis.StripVarianceWasNegative,
            analysis.FOverSpots is { } wrong ? Test(wrong, analysis.DegreesOverSpots) : null,
            treatments.F is { } right ? Test(right, analysis.Strips.Error.DegreesOfFreedom) : null,
            [.. Planned(joined, analysis.SpotsPerStrip, spot, strip, comparison)],
            [.. Doubts(measure, analysis)]);

        FTest Test(double f, int degrees) =>
            new(f, treatments.DegreesOfFreedom, degrees, Probability.Of(FisherF.UpperTail(f, treatments.DegreesOfFreedom, degrees)), Methods.Subsampling);
    }

    // The first line is the trial itself: what the verdicts say of the comparison that lost the fewest strips.
    private static IEnumerable<SpotPlan> Planned(JoinedStrips joined, double spotsPerStrip, double spot, double strip, MeasureComparison comparison)
    {
        if (comparison.Contrasts.Where(contrast => contrast is { Detectable: not null, OwnAlpha: not null }).MinBy(contrast => contrast.Detectable) is not { Estimate: { } estimate } fullest)
        {
            yield break;
        }

        var (strips, spots) = (joined.Blocks.Length, Math.Max(1, (int)Math.Round(spotsPerStrip)));
        yield return new(strips, spots, estimate.StandardError, fullest.Detectable!.Value);
        if (!(spot + strip > 0))
        {
            yield break;
        }

        foreach (var (r, k) in new[] { (strips, 2 * spots), (strips + 2, spots), (2 * strips, spots), (2 * strips, Math.Max(1, spots / 2)) }.Distinct())
        {
            var error = Math.Sqrt(2 * SpotAllocation.VarianceOfMean(strip, spot, r, k));
            yield return new(r, k, error, error * TTestPower.NoncentralityFor(Contrast.DetectablePower, (r - 1) * (joined.Treatments.Length - 1), fullest.OwnAlpha!.Value));
        }
    }

    private static IEnumerable<Finding> Doubts(Measure measure, Subsampling analysis)
    {
        if (analysis.StripVarianceWasNegative)
        {
            yield return new("strips-vary-no-more-than-spots", FindingWeight.Note, $"{measure.Label}: strips differ no more than their own spots make them; the variance between strips is taken as 0, which a small trial can bring about by chance. What other numbers of strips and spots would show then rests on the spots alone and can stand above this trial's own.", measure.Id);
        }

        if (!analysis.HasEqualSpots)
        {
            yield return new("spots-unequal", FindingWeight.Note, string.Create(CultureInfo.InvariantCulture, $"{measure.Label}: strips have unequal numbers of spots; each strip counts once, and {analysis.SpotsPerStrip:0.0} spots, the harmonic mean, stand for all."), measure.Id);
        }
    }
}
