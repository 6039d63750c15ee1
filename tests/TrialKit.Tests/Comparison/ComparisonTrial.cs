using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Comparison;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Tests.Comparison;

/// <summary>Trials made of numbers: one measure of their own, a value a strip.</summary>
internal static class ComparisonTrial
{
    public const string MeasureName = "score";

    public static readonly Measure Score = new("own-score", MeasureName, Unit.None, MeasureKind.Other, Better.Unsaid, IsHeadline: true);

    /// <summary>A trial in pairs; NaN stands for a strip without a value.</summary>
    public static StripTrial Pairs(double[] treated, double[] control, double alpha = 0.10, double? margin = null) =>
        Create(
            Layout.Pairs,
            ["none", "new"],
            0,
            [.. treated.SelectMany((value, pair) => new[] { (value, pair, 1), (control[pair], pair, 0) })],
            alpha,
            margin);

    /// <summary>A trial in blocks.</summary>
    public static StripTrial Blocks(double[] values, int[] block, int[] treatment, string[] names, int? control = null, double alpha = 0.10, double? margin = null) =>
        Create(Layout.Blocks, names, control, [.. values.Select((value, index) => (value, block[index], treatment[index]))], alpha, margin);

    /// <summary>The values of the trial's measure.</summary>
    public static StripMeasure Values(StripTrial trial)
    {
        var byStrip = trial.Measurements.ToDictionary(value => value.Strip.Name, value => value.Value, Identifier.Comparer);
        return new(Score, [.. trial.Strips.Select(strip => new StripValue(strip, byStrip.TryGetValue(strip.Name, out var value) ? value : null))]);
    }

    /// <summary>The comparison of the trial's measure.</summary>
    public static MeasureComparison Compare(StripTrial trial) => StripComparison.Compare(Values(trial), trial);

    private static StripTrial Create(Layout layout, string[] names, int? control, (double Value, int Block, int Treatment)[] cells, double alpha, double? margin)
    {
        ImmutableArray<Treatment> treatments = [.. names.Select(name => new Treatment(name, name, Cost: null, Products: []))];
        Strip[] strips = [.. cells.Select((cell, index) => SmallTrial.Strip(Name("S", index), treatments[cell.Treatment], index + 1) with { Block = Name("B", cell.Block) })];
        return StripTrial.Create(SmallTrial.Draft with
        {
            Treatments = treatments,
            Strips = [.. strips],
            Design = new Design(layout, control is { } index ? treatments[index] : null, ConfidenceLevel.FromAlpha(alpha))
            {
                Margins = margin is { } known ? [new EquivalenceMargin(Score.Id, known, "")] : [],
            },
            Measurements = [.. cells.Select((cell, index) => (cell.Value, Strip: strips[index])).Where(cell => !double.IsNaN(cell.Value)).Select(cell => new StripMeasurement(cell.Strip, Spot: null, MeasureName, cell.Value, Unit: null))],
        });
    }

    private static string Name(string letter, int index) => string.Create(CultureInfo.InvariantCulture, $"{letter}{index + 1:00}");
}
