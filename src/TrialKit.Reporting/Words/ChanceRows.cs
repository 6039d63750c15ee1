using TrialKit.Money;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Words;

/// <summary>What another price or another cost would make of a difference, as the cells of a table.</summary>
public static class ChanceRows
{
    /// <summary>What the table shows.</summary>
    public const string Caption = "At other prices and costs";

    // Of the points of a curve: both ends, the middle, and half way between.
    private const int Step = 5;

    /// <summary>The heads of the columns.</summary>
    public static IReadOnlyList<string> Heads(PairBudget budget, MoneyText text)
    {
        ArgumentNullException.ThrowIfNull(budget);
        ArgumentNullException.ThrowIfNull(text);
        return ["Net price", "Added cost", "Takes", $"Worth, {text.AreaUnit(budget.Cost.Currency)}", "Pays", $"{NumberText.Number(budget.Margin.Percent, 0)}\u00A0% to spare"];
    }

    /// <summary>The rows: the trial's own price and cost first, then other prices, then other costs; empty without a worth.</summary>
    public static IEnumerable<IReadOnlyList<string>> Of(PairBudget budget, MoneyText text)
    {
        ArgumentNullException.ThrowIfNull(budget);
        ArgumentNullException.ThrowIfNull(text);
        if (budget.At is not { } at)
        {
            return [];
        }

        var others = Some(budget.OverPrice).Where(point => text.Of(point.Price) != text.Of(at.Price))
            .Concat(Some(budget.OverCost).Where(point => text.Of(point.Cost) != text.Of(at.Cost)));
        return others.Prepend(at).Select(point => (IReadOnlyList<string>)
        [
            text.Of(point.Price),
            text.Of(point.Cost),
            text.Of(point.BreakEven),
            NumberText.Difference(text.Value(point.Net), 2),
            point.Pays is { } pays ? MoneyWords.Percent(pays) : NumberText.Dash,
            point is { PaysWithMargin: { } margin, Cost.PerHectare: > 0 } ? MoneyWords.Percent(margin) : NumberText.Dash,
        ]);
    }

    private static IEnumerable<MoneyPoint> Some(IReadOnlyList<MoneyPoint> points) => points.Where((_, index) => index % Step == 0);
}
