using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Glm;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>Treatments compared on counts of strips, blocks taken out, with the scatter that the counts themselves show.</summary>
/// <param name="Measure">The measure it stands beside; the verdict is that measure's own.</param>
/// <param name="IsShare">Whether a share of seeds was modelled; else plants along row.</param>
/// <param name="Strips">Strips behind it.</param>
/// <param name="Dispersion">Pearson's chi-square by its degrees of freedom: 1 where counts scatter as chance alone has it, more where strips differ beyond that. Null when the model could not be fitted.</param>
/// <param name="DegreesOfFreedom">Of the dispersion and of every test here.</param>
/// <param name="Overall">The F test of any difference between treatments; null when it could not be made.</param>
/// <param name="Contrasts">Treatment by treatment; empty when they could not be made.</param>
/// <param name="Method">The procedure.</param>
/// <param name="Findings">What to doubt.</param>
public sealed record CountComparison(
    Measure Measure,
    bool IsShare,
    int Strips,
    double? Dispersion,
    int DegreesOfFreedom,
    FTest? Overall,
    ImmutableArray<CountContrast> Contrasts,
    Method Method,
    ImmutableArray<Finding> Findings)
{
    /// <summary>The comparison of one measure's counts; null when fewer than two blocks or treatments can be compared.</summary>
    /// <param name="counts">The counts.</param>
    /// <param name="trial">The trial.</param>
    public static CountComparison? Of(StripCounts counts, StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(counts);
        ArgumentNullException.ThrowIfNull(trial);
        var method = counts.IsShare ? Methods.QuasiBinomial : Methods.QuasiPoisson;
        var byStrip = counts.Values.ToDictionary(value => value.Strip.Name, Identifier.Comparer);
        var strips = JoinedStrips.Of(
            new StripMeasure(counts.Measure, [.. trial.Strips.Select(strip => new StripValue(strip, byStrip.TryGetValue(strip.Name, out var value) ? value.Count : null))]),
            trial.Treatments,
            trial.Design.Control);
        if (strips.Blocks.Length < 2 || strips.Treatments.Length < 2)
        {
            return null;
        }

        var entries = strips.Entries.Select(entry => byStrip[entry.Strip.Name]).ToArray();
        var degrees = entries.Length - strips.Blocks.Length - strips.Treatments.Length + 1;
        if (counts.IsShare && entries.FirstOrDefault(entry => entry.Count > entry.Size) is { } over)
        {
            return Unfitted(Text($"{counts.Measure.Label}: strip {over.Strip} has more plants than seeds, so a share of seeds cannot be modelled."), "count-over-seeds");
        }

        var family = counts.IsShare ? GlmFamily.BinomialLogit : GlmFamily.PoissonLog;
        var design = Design(strips);
        double[] observed = [.. entries.Select(entry => entry.Count)];
        double[] sizes = [.. entries.Select(entry => entry.Size)];
        var fit = GlmFit.Of(family, design, observed, sizes);
        if (fit.Status != GlmStatus.Converged)
        {
            return Unfitted(Text($"{counts.Measure.Label}: {Reason(fit.Status)}, so the model of counts has no finite answer."), "counts-not-fitted");
        }

        if (fit.Dispersion is not { } dispersion || dispersion <= 0)
        {
            return Unfitted(Text($"{counts.Measure.Label}: blocks and treatments leave the counts no scatter; check the data."), "counts-no-scatter");
        }

        var contrasts = Compared(fit, dispersion, strips, trial.Design);
        if (contrasts.Any(contrast => !double.IsFinite(contrast.Ratio) || !double.IsFinite(contrast.High)))
        {
            return Unfitted(Text($"{counts.Measure.Label}: the interval of a ratio has no end that a number can hold; check the counts and the lengths."), "counts-not-fitted");
        }

        var smaller = GlmFit.Of(family, FirstColumns(design, strips.Blocks.Length), observed, sizes);
        var overall = QuasiFTest.Of(smaller, fit);
        return new(
            counts.Measure,
            counts.IsShare,
            entries.Length,
            dispersion,
            degrees,
            overall is { F: { } f, P: { } p } ? new FTest(Math.Max(0, f), overall.NumeratorDegrees, overall.DenominatorDegrees, Probability.Of(p), method) : null,
            contrasts,
            method,
            []);

        CountComparison Unfitted(string message, string id) =>
            new(counts.Measure, counts.IsShare, entries.Length, Dispersion: null, Math.Max(0, degrees), Overall: null, [], method, [new(id, FindingWeight.Note, message, counts.Measure.Id)]);
    }

    // A column a block, then one for each treatment but the first.
    private static double[,] Design(JoinedStrips strips)
    {
        var (blocks, treatments) = (strips.Blocks.Length, strips.Treatments.Length);
        var design = new double[strips.Entries.Length, blocks + treatments - 1];
        for (var i = 0; i < strips.Entries.Length; i++)
        {
            design[i, strips.BlockIndex(strips.Entries[i].Strip)] = 1;
            if (strips.TreatmentIndex(strips.Entries[i].Strip) is > 0 and var treatment)
            {
                design[i, blocks + treatment - 1] = 1;
            }
        }

        return design;
    }

    private static double[,] FirstColumns(double[,] design, int columns)
    {
        var part = new double[design.GetLength(0), columns];
        for (var i = 0; i < part.GetLength(0); i++)
        {
            for (var j = 0; j < columns; j++)
            {
                part[i, j] = design[i, j];
            }
        }

        return part;
    }

    private static ImmutableArray<CountContrast> Compared(GlmFit fit, double dispersion, JoinedStrips strips, Design design)
    {
        var critical = StudentT.UpperQuantile(design.Level.Alpha / 2, fit.DegreesOfFreedom);
        var found = strips.ComparedPairs(design).Select(pair => (pair.Treatment, pair.Baseline, Log: fit.Contrast(Weights(strips, pair.Treatment, pair.Baseline), dispersion)!.Value)).ToArray();
        double[] p = [.. found.Select(entry => 2 * StudentT.LowerTail(-Math.Abs(entry.Log.Estimate / entry.Log.StandardError), fit.DegreesOfFreedom))];
        var holm = Multiplicity.Holm(p);
        return [.. found.Select((entry, index) => new CountContrast(
            strips.Treatments[entry.Treatment],
            strips.Treatments[entry.Baseline],
            Math.Exp(entry.Log.Estimate),
            Math.Exp(entry.Log.Estimate - (critical * entry.Log.StandardError)),
            Math.Exp(entry.Log.Estimate + (critical * entry.Log.StandardError)),
            entry.Log.Estimate / entry.Log.StandardError,
            Probability.Of(p[index]),
            Probability.Of(holm[index])))];
    }

    private static double[] Weights(JoinedStrips strips, int treatment, int baseline)
    {
        var weights = new double[strips.Blocks.Length + strips.Treatments.Length - 1];
        Add(treatment, 1);
        Add(baseline, -1);
        return weights;

        void Add(int index, double weight)
        {
            if (index > 0)
            {
                weights[strips.Blocks.Length + index - 1] += weight;
            }
        }
    }

    private static string Reason(GlmStatus status) => status switch
    {
        GlmStatus.AllZero => "no plant was counted on any strip",
        GlmStatus.AllFull => "every seed came up on every strip",
        GlmStatus.Separated => "a block or treatment has nothing but zeros or nothing but full counts",
        _ => "the search for the fit did not end",
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
