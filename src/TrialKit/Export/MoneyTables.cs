using System.Collections.Immutable;
using TrialKit.Money;
using UnitsNet;

namespace TrialKit.Export;

/// <summary>What differences cost and are worth, as tables.</summary>
internal static class MoneyTables
{
    public static IEnumerable<ResultTable> Of(TrialAnalysis analysis) => [Costs(analysis.Money), Budgets(analysis.Money, analysis.Trial.Crop.Bushel), Curves(analysis.Money, analysis.Trial.Crop.Bushel)];

    private static ResultTable Costs(ImmutableArray<PairBudget> budgets) => ResultTable.Of(
        "money-costs",
        "one line of the costs of a treatment against another",
        budgets.SelectMany(budget => budget.Costs.Select(line => (Budget: budget, Owner: budget.Treatment, Line: line)).Concat(budget.BaselineCosts.Select(line => (Budget: budget, Owner: budget.Baseline, Line: line)))),
        ("treatment", "the treatment", row => row.Budget.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Budget.Baseline.Name),
        ("of", "whose cost it is; the baseline's is saved", row => row.Owner.Name),
        ("kind", "stated, saved, product, machine or time", row => row.Line.Kind),
        ("what", "what it is for", row => row.Line.What),
        ("per_ac", "money per acre", row => row.Line.Amount.PerAcre),
        ("per_ha", "money per hectare", row => row.Line.Amount.PerHectare),
        ("currency", "as written", row => row.Line.Amount.Currency));

    private static ResultTable Budgets(ImmutableArray<PairBudget> budgets, Mass? bushel) => ResultTable.Of(
        "money",
        "what one treatment costs and is worth against another",
        budgets,
        ("treatment", "the treatment", row => row.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Baseline.Name),
        ("currency", "as written", row => row.Cost.Currency),
        ("cost_per_ac", "net added cost", row => row.Cost.PerAcre),
        ("cost_per_ha", "net added cost", row => row.Cost.PerHectare),
        ("price_per_t", "of grain, net of hauling and drying", row => row.At?.Price.PerKilogram * 1000),
        ("price_per_bu", "of grain, net of hauling and drying; empty for a crop without a bushel", row => bushel is { } weight ? row.At?.Price.PerBushel(weight) : null),
        ("break_even_kg_per_ha", "the yield difference that pays for the cost", row => row.BreakEven?.KilogramsPerHectare),
        ("break_even_bu_per_ac", "the yield difference that pays for the cost; empty for a crop without a bushel", row => bushel is { } weight ? row.BreakEven?.BushelsPerAcre(weight) : null),
        ("added_returns_per_ha", "of the budget", row => row.Budget?.AddedReturns),
        ("reduced_costs_per_ha", "of the budget", row => row.Budget?.ReducedCosts),
        ("added_costs_per_ha", "of the budget", row => row.Budget?.AddedCosts),
        ("reduced_returns_per_ha", "of the budget", row => row.Budget?.ReducedReturns),
        ("net_per_ac", "worth of the difference found above its cost", row => row.At?.Net.PerAcre),
        ("net_per_ha", "worth of the difference found above its cost", row => row.At?.Net.PerHectare),
        ("net_low_per_ac", "at the lower end of the yield interval", row => row.At?.Low?.PerAcre),
        ("net_high_per_ac", "at the upper end of the yield interval", row => row.At?.High?.PerAcre),
        ("net_low_per_ha", "at the lower end of the yield interval", row => row.At?.Low?.PerHectare),
        ("net_high_per_ha", "at the upper end of the yield interval", row => row.At?.High?.PerHectare),
        ("interval_alpha", "one minus the level of that interval", row => row.At?.Low is null ? null : row.Response?.Level.Alpha),
        ("interval_comparisons", "how many comparisons the interval holds for at once; each chance is of its own comparison alone", row => row.At?.Low is null ? null : row.Response?.Comparisons),
        ("p_yield_higher", "chance that the true yield difference is above zero", row => row.AboveZero?.Value),
        ("p_pays", "chance that it pays", row => row.At?.Pays?.Value),
        ("margin_percent", "margin over the cost", row => row.Margin.Percent),
        ("p_pays_with_margin", "chance that it pays with the margin", row => row.At?.PaysWithMargin?.Value));

    private static ResultTable Curves(ImmutableArray<PairBudget> budgets, Mass? bushel) => ResultTable.Of(
        "money-curves",
        "worth and chance at one price and one cost",
        budgets.SelectMany(budget => budget.OverPrice.Select(point => (Budget: budget, Over: "price", Point: point)).Concat(budget.OverCost.Select(point => (Budget: budget, Over: "cost", Point: point)))),
        ("treatment", "the treatment", row => row.Budget.Treatment.Name),
        ("baseline", "what it is compared with", row => row.Budget.Baseline.Name),
        ("over", "what is varied: price or cost", row => row.Over),
        ("price_per_t", "net price of grain", row => row.Point.Price.PerKilogram * 1000),
        ("price_per_bu", "net price of grain; empty for a crop without a bushel", row => bushel is { } weight ? row.Point.Price.PerBushel(weight) : null),
        ("cost_per_ac", "net added cost", row => row.Point.Cost.PerAcre),
        ("cost_per_ha", "net added cost", row => row.Point.Cost.PerHectare),
        ("break_even_kg_per_ha", "the yield difference that pays", row => row.Point.BreakEven.KilogramsPerHectare),
        ("net_per_ac", "worth of the difference found above its cost", row => row.Point.Net.PerAcre),
        ("net_per_ha", "worth of the difference found above its cost", row => row.Point.Net.PerHectare),
        ("net_low_per_ha", "at the lower end of the yield interval", row => row.Point.Low?.PerHectare),
        ("net_high_per_ha", "at the upper end of the yield interval", row => row.Point.High?.PerHectare),
        ("p_pays", "chance that it pays", row => row.Point.Pays?.Value),
        ("p_pays_with_margin", "chance that it pays with the margin", row => row.Point.PaysWithMargin?.Value));
}
