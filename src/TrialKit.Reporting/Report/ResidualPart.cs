using TrialKit.Comparison;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;

namespace TrialKit.Reporting.Report;

/// <summary>What the comparisons leave unexplained: the pictures in which a trend, a funnel or a strip apart would show.</summary>
internal static class ResidualPart
{
    private const double Height = 140;
    private const int FewestPoints = 3;

    private static readonly string[] Drawn = ["t50", "spread", "stand", "yield"];

    public static IEnumerable<Block> Of(TrialAnalysis analysis, TreatmentTones tones)
    {
        var panels = analysis.Measures
            .Where(measure => Drawn.Contains(measure.Measure.Id, StringComparer.Ordinal))
            .Select(measure => (measure.Measure, Figure: Figure(measure, tones)))
            .Where(each => each.Figure is not null)
            .ToArray();
        if (panels.Length == 0)
        {
            yield break;
        }

        yield return new Heading(2, "What is left unexplained");
        foreach (var row in panels.Chunk(2))
        {
            yield return new FigureBlock(
                new PanelsFigure([.. row.Select(each => new FigurePanel(each.Measure.Label, each.Figure!))], string.Join(" ", row.Select(each => each.Figure!.AltText))), Height: Height)
            {
                Name = $"residuals-{string.Join('-', row.Select(each => each.Measure.Id))}",
            };
        }

        yield return new Paragraph(
            panels[0].Figure is not null && analysis.Trial.Design.Layout == Trials.Layout.Pairs
                ? "Each dot is a pair: its difference less the mean difference, over the mean of its two strips. A slope would say that the treatment does more where the level is higher."
                : "Each dot is a strip: its value less what its block and its treatment lead to expect, across the field. A slope would say that the field changes within blocks.",
            TextSize.Small);
    }

    private static ResidualFigure? Figure(MeasureComparison measure, TreatmentTones tones)
    {
        var unit = MeasureText.UnitWord(measure.Measure);
        if (measure is { Pairs: { Pairs: { Length: >= FewestPoints } pairs }, Contrasts: [var contrast, ..] })
        {
            var tone = tones[contrast.Treatment];
            ResidualPoint[] points = [.. pairs.Select(pair => new ResidualPoint((pair.TreatedValue + pair.ControlValue) / 2, pair.Difference - contrast.Difference, tone))];
            var furthest = pairs.MaxBy(pair => Math.Abs(pair.Difference - contrast.Difference))!;
            return new($"difference less its mean, {unit}", $"mean of the pair, {unit}", points, $"{measure.Measure.Label}: pair {furthest.Block} lies furthest from the mean difference, by {MeasureText.Difference(measure.Measure, furthest.Difference - contrast.Difference)} {unit}.");
        }

        if (measure.Blocks is not { Residuals: { Length: >= FewestPoints } residuals })
        {
            return null;
        }

        var inOrder = residuals.All(residual => residual.Strip.Order is not null);
        var most = residuals.MaxBy(residual => Math.Abs(residual.Value!.Value))!;
        return new(
            $"value less expected, {unit}",
            inOrder ? "place across the field" : "place in the record",
            [.. residuals.Select((residual, i) => new ResidualPoint(inOrder ? residual.Strip.Order!.Value : i + 1, residual.Value!.Value, tones[residual.Strip.Treatment]))],
            $"{measure.Measure.Label}: strip {most.Strip.Name} lies furthest from what was expected, by {MeasureText.Difference(measure.Measure, most.Value!.Value)} {unit}.");
    }
}
