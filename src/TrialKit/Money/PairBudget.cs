using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Money;

/// <summary>What one treatment costs and earns against another.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Baseline">What it is compared with.</param>
/// <param name="Costs">The treatment's costs.</param>
/// <param name="BaselineCosts">The baseline's costs, which are saved.</param>
/// <param name="Cost">Net added cost.</param>
/// <param name="Response">The difference of yield that it rests on; null when the trial has none.</param>
/// <param name="BreakEven">The difference of yield that pays for it; null without a price.</param>
/// <param name="At">What the difference found is worth; null without a yield or a price.</param>
/// <param name="AboveZero">The chance that the true difference of yield is above zero; null when it cannot be said.</param>
/// <param name="Margin">The margin.</param>
/// <param name="OverPrice">The same over prices from half to one and a half times the price, the cost unchanged; empty without a yield.</param>
/// <param name="OverCost">The same over costs, the price unchanged; empty without a yield.</param>
/// <param name="Budget">The budget's four sides per hectare, from the difference found; null without a yield or a price.</param>
/// <param name="Findings">Why a figure is not there, and what to doubt.</param>
public sealed record PairBudget(
    Treatment Treatment,
    Treatment Baseline,
    ImmutableArray<CostLine> Costs,
    ImmutableArray<CostLine> BaselineCosts,
    MoneyPerArea Cost,
    YieldResponse? Response,
    GrainYieldDifference? BreakEven,
    MoneyPoint? At,
    Probability? AboveZero,
    UnitsNet.Ratio Margin,
    ImmutableArray<MoneyPoint> OverPrice,
    ImmutableArray<MoneyPoint> OverCost,
    PartialBudget? Budget,
    ImmutableArray<Finding> Findings)
{
    private const int CurvePoints = 21;
    private const double LeastPrice = 0.5;
    private const double MostPrice = 1.5;
    private const double Rounding = 1e-12;

    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Partial budget and the chance that it pays",
        "Partial budget as in extension budgets; capital recovery; the paired form of Munkvold et al. 2001, Phytopathology 91:477-484",
        "docs/methods/partial-budget.md");

    /// <summary>The budget of two treatments.</summary>
    /// <param name="treatment">The treatment.</param>
    /// <param name="baseline">What it is compared with.</param>
    /// <param name="response">The difference of yield; null when the trial has none.</param>
    /// <param name="price">Net price of grain; null when not given.</param>
    /// <param name="money">Wage and margin.</param>
    public static PairBudget Of(Treatment treatment, Treatment baseline, YieldResponse? response, GrainPrice? price, MoneySettings money)
    {
        ArgumentNullException.ThrowIfNull(treatment);
        ArgumentNullException.ThrowIfNull(baseline);
        ArgumentNullException.ThrowIfNull(money);
        var (costs, baselineCosts) = (TreatmentCosts.Of(treatment, money), TreatmentCosts.Of(baseline, money));
        var cost = MoneyPerArea.FromPerHectare(
            Net(costs, baselineCosts),
            costs.Concat(baselineCosts).Select(line => line.Amount.Currency).FirstOrDefault(price?.Currency ?? ""));
        var margin = money.Margin.DecimalFractions;
        var at = response is not null && price is { } known ? MoneyPoint.Of(response, known, cost, margin) : null;
        return new(
            treatment,
            baseline,
            costs,
            baselineCosts,
            cost,
            response,
            price is { } given ? Money.BreakEven.Response(cost, given) : null,
            at,
            response is null ? null : ChanceOfPaying.Above(response.Difference.KilogramsPerHectare, response.StandardError, response.DegreesOfFreedom, 0),
            money.Margin,
            at is null ? [] : [.. Steps(LeastPrice, MostPrice).Select(share => MoneyPoint.Of(response!, GrainPrice.FromPerTonne(at.Price.PerKilogram * 1000 * share, at.Price.Currency), cost, margin))],
            at is null ? [] : [.. CostSteps(cost, at).Select(amount => MoneyPoint.Of(response!, at.Price, MoneyPerArea.FromPerHectare(amount, at.Price.Currency), margin))],
            at is null ? null : Sides(response!, at, costs, baselineCosts),
            [.. BudgetFindings.Of(treatment, baseline, costs, baselineCosts, response, price)]);
    }

    // What is left of equal costs by the rounding of their sums is no cost.
    private static double Net(ImmutableArray<CostLine> costs, ImmutableArray<CostLine> baselineCosts)
    {
        var net = costs.Sum(line => line.Amount.PerHectare) - baselineCosts.Sum(line => line.Amount.PerHectare);
        return Math.Abs(net) <= Rounding * costs.Concat(baselineCosts).Sum(line => Math.Abs(line.Amount.PerHectare)) ? 0 : net;
    }

    private static PartialBudget Sides(YieldResponse response, MoneyPoint at, ImmutableArray<CostLine> costs, ImmutableArray<CostLine> baselineCosts)
    {
        var returns = response.Difference.KilogramsPerHectare * at.Price.PerKilogram;
        double[] changes = [.. costs.Select(line => line.Amount.PerHectare), .. baselineCosts.Select(line => -line.Amount.PerHectare)];
        return new(Math.Max(0, returns), -changes.Where(change => change < 0).Sum(), changes.Where(change => change > 0).Sum(), Math.Max(0, -returns));
    }

    private static IEnumerable<double> Steps(double low, double high) =>
        Enumerable.Range(0, CurvePoints).Select(step => low + ((high - low) * step / (CurvePoints - 1)));

    /// <summary>From nothing to twice the cost (or the saving); without either, to what the yield interval is worth at its wider side.</summary>
    private static IEnumerable<double> CostSteps(MoneyPerArea cost, MoneyPoint at)
    {
        var reach = cost.PerHectare != 0
            ? 2 * cost.PerHectare
            : new[] { at.Net.PerHectare, at.Low?.PerHectare ?? 0, at.High?.PerHectare ?? 0 }.Max(Math.Abs);
        return reach == 0 ? [0] : Steps(Math.Min(0, reach), Math.Max(0, reach));
    }
}
