using System.Collections.Immutable;
using TrialKit.Money;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;

namespace TrialKit.Reporting.Report;

/// <summary>What each difference costs and is worth: sentences, the budget, and the chance that it pays over price and cost.</summary>
internal static class MoneyPart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis, TreatmentTones tones)
    {
        if (analysis.Money.IsEmpty)
        {
            yield break;
        }

        var text = new MoneyText(analysis.Trial.Units, analysis.Trial.Crop.Bushel);
        yield return new Heading(2, "What the difference is worth");
        foreach (var budget in analysis.Money)
        {
            yield return new Heading(3, $"{budget.Treatment.Label} against {budget.Baseline.Label}");
            yield return new BulletList([.. MoneyWords.Of(budget, analysis.Trial).Select(sentence => RichText.Of(sentence))]);
            if (Lines(budget, text) is { Rows.Count: > 0 } lines)
            {
                yield return lines;
            }

            if (budget.At is not null)
            {
                yield return Chances(budget, text);
            }

            foreach (var curve in Curves(budget, text, tones))
            {
                yield return curve;
            }
        }

        if (MoneyWords.Basis(analysis.Money) is { } basis)
        {
            yield return new Paragraph(basis, TextSize.Small);
        }
    }

    private static Table Lines(PairBudget budget, MoneyText text)
    {
        var costs = budget.Costs.Select(line => TableRow.Of($"{budget.Treatment.Label}: {line.What}", NumberText.Difference(-text.Value(line.Amount), 2)))
            .Concat(budget.BaselineCosts.Select(line => TableRow.Of($"{budget.Baseline.Label}: {line.What}, no longer spent", NumberText.Difference(text.Value(line.Amount), 2))));
        TableRow[] worth = budget.At is { } at
            ?
            [
                TableRow.Of($"grain, at {text.Of(at.Price)} net", NumberText.Difference(text.Value(at.Net) + text.Value(budget.Cost), 2)),
                new(["net", NumberText.Difference(text.Value(at.Net), 2)], Strong: true),
            ]
            : [];
        return new("Partial budget", [new("Line"), new("Money", text.AreaUnit(budget.Cost.Currency), ColumnAlignment.Right)], [.. costs, .. worth]);
    }

    private static Table Chances(PairBudget budget, MoneyText text) => new(
        ChanceRows.Caption,
        [.. ChanceRows.Heads(budget, text).Select(head => new TableColumn(head, Alignment: ColumnAlignment.Right))],
        [.. ChanceRows.Of(budget, text).Select((row, index) => new TableRow([.. row], Strong: index == 0))],
        "The first line is this trial's own. Takes: the yield difference that pays for the cost. Pays: the chance of it.");

    /// <summary>The chances as curves, or why there is none to draw.</summary>
    internal static IEnumerable<Block> Curves(PairBudget budget, MoneyText text, TreatmentTones tones)
    {
        if (budget.At is not { Pays: not null } at)
        {
            yield break;
        }

        if (budget.Response is { StandardError: 0 })
        {
            yield return new Paragraph("No curve is drawn: without any spread between the strips a chance is 0 or 1 and nothing between.", TextSize.Small);
            yield break;
        }

        var currency = at.Net.Currency;
        if (budget.Cost.PerHectare == 0)
        {
            yield return new Paragraph($"The price makes no difference to the chance that {budget.Treatment.Label} pays, since it costs what {budget.Baseline.Label} costs: no curve over the price is drawn.", TextSize.Small);
        }
        else if (Points(budget.OverPrice, point => text.Value(point.Price)) is { } prices)
        {
            yield return Figure(budget, $"net price of grain, {text.PriceUnit(currency)}", prices, text.Value(at.Price), "The chance that it pays, over the price", "chance-over-price", tones);
        }

        if (Points(budget.OverCost, point => text.Value(point.Cost)) is { } costs)
        {
            yield return Figure(budget, $"net added cost, {text.AreaUnit(currency)}", costs, text.Value(at.Cost), "The chance that it pays, over the cost", "chance-over-cost", tones);
        }
    }

    private static FigureBlock Figure(PairBudget budget, string axis, ChancePoint[] points, double now, string caption, string name, TreatmentTones tones)
    {
        var ends = $"From {NumberText.Number(points[0].At, 2)} to {NumberText.Number(points[^1].At, 2)} ({axis}) the chance that {budget.Treatment.Label} pays goes from {NumberText.Percent(points[0].Pays)} to {NumberText.Percent(points[^1].Pays)}.";
        return new(new ChanceCurveFigure(axis, points, now, $"with {NumberText.Number(budget.Margin.Percent, 0)}\u00A0% to spare", Math.Max(1, tones[budget.Treatment]), ends), caption)
        {
            Name = FigureName.Of(name, new(budget.Treatment, budget.Baseline)),
        };
    }

    /// <summary>The points; null where there are no chances or nothing to draw them over.</summary>
    private static ChancePoint[]? Points(ImmutableArray<MoneyPoint> points, Func<MoneyPoint, double> at)
    {
        ChancePoint[] drawn = [.. points.Where(point => point is { Pays: not null, PaysWithMargin: not null }).Select(point => new ChancePoint(at(point), point.Pays!.Value.Value, point.PaysWithMargin!.Value.Value))];
        return drawn.Length > 1 ? drawn : null;
    }
}
