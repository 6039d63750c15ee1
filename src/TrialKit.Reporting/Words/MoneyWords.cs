using TrialKit.Money;
using TrialKit.Reporting.Document;
using TrialKit.Trials;

namespace TrialKit.Reporting.Words;

/// <summary>What a difference costs and is worth, in sentences.</summary>
public static class MoneyWords
{
    /// <summary>What the chances rest on; null where no chance is given.</summary>
    /// <param name="budgets">Every difference of the trial.</param>
    public static string? Basis(IReadOnlyCollection<PairBudget> budgets)
    {
        ArgumentNullException.ThrowIfNull(budgets);
        const string basis = "The chances hold for this field and this year only, with the price taken as known and no other knowledge than these strips (a flat prior).";
        var given = budgets.Where(budget => budget.At?.Pays is not null).ToArray();
        return given.Length == 0 ? null
            : given.Any(budget => budget.Response is { Comparisons: > 1 })
                ? $"{basis} Each chance is of one comparison by itself. The ranges of worth are drawn wider, so that all of them together hold the truth as often as their level says; a chance and a range can therefore seem to disagree."
                : basis;
    }

    /// <summary>The sentences, the cost first.</summary>
    public static IEnumerable<string> Of(PairBudget budget, StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(budget);
        ArgumentNullException.ThrowIfNull(trial);
        var text = new MoneyText(trial.Units, trial.Crop.Bushel);
        yield return Cost(budget, text);
        if (budget is { BreakEven: { } breakEven } && trial.GrainPrice is { } price)
        {
            yield return BreakEven(budget, breakEven, text.Of(price), text);
        }

        if (budget.At is { } at)
        {
            yield return Net(budget, at, text);
            if (Chance(budget, at) is { } chance)
            {
                yield return chance;
            }

            foreach (var reason in budget.Findings.Where(finding => finding.Id is "money-one-replicate" or "money-no-spread"))
            {
                yield return reason.Message;
            }
        }
        else
        {
            foreach (var reason in budget.Findings.Where(finding => finding.Id is "money-no-yield" or "money-no-price"))
            {
                yield return reason.Message;
            }
        }
    }

    /// <summary>The answer in few words, where there is a worth; null otherwise.</summary>
    public static string? Answer(PairBudget budget, StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(budget);
        ArgumentNullException.ThrowIfNull(trial);
        if (budget.At is not { } at)
        {
            return null;
        }

        var text = new MoneyText(trial.Units, trial.Crop.Bushel);
        var alone = budget.Response is { Comparisons: > 1 } ? ", by itself," : "";
        var chance = at.Pays is { } pays ? $" The chance that it pays{alone} is {Percent(pays)}." : "";
        return $"{budget.Treatment.Label} against {budget.Baseline.Label}, after its cost: {Worth(at, text)}{Range(budget, at, text)}.{chance}";
    }

    /// <summary>The answers of every difference in few words; null where none has a worth.</summary>
    /// <param name="budgets">The differences.</param>
    /// <param name="trial">The trial.</param>
    /// <param name="most">The most differences told; of more, those of the highest worth.</param>
    public static string? Answers(IReadOnlyCollection<PairBudget> budgets, StripTrial trial, int most)
    {
        ArgumentNullException.ThrowIfNull(budgets);
        ArgumentNullException.ThrowIfNull(trial);
        var worth = budgets.Where(budget => budget.At is not null).ToArray();
        if (worth.Length < 2)
        {
            return worth.Length == 0 ? null : Answer(worth[0], trial);
        }

        var text = new MoneyText(trial.Units, trial.Crop.Bushel);
        var told = worth.Length <= most ? worth : [.. worth.OrderByDescending(budget => budget.At!.Net.PerHectare).Take(most)];
        var baseline = told.Select(budget => budget.Baseline.Label).Distinct(StringComparer.Ordinal).Count() == 1 ? told[0].Baseline.Label : null;
        var parts = told.Select(budget => $"{budget.Treatment.Label}{(baseline is null ? $" against {budget.Baseline.Label}" : "")} {NumberText.Difference(text.Value(budget.At!.Net), 2)}{Ends(budget, text)}{(budget.At.Pays is { } pays ? $", pays with a chance of {Percent(pays)}" : "")}");
        var left = worth.Length > told.Length ? $"; {NumberText.CountWord(worth.Length - told.Length).ToLowerInvariant()} more are worth less" : "";
        var ranges = told.Select(budget => budget.Response).FirstOrDefault(response => response is not null) is { } response
            ? $" Ranges are {response.Level} intervals{Together(response.Comparisons)}; each chance is of one comparison by itself."
            : "";
        return $"{(baseline is null ? "after" : $"against {baseline}, after")} cost, in {text.AreaUnit(told[0].At!.Net.Currency)}: {string.Join("; ", parts)}{left}.{ranges}";
    }

    private static string Ends(PairBudget budget, MoneyText text) => budget.At is { Low: { } low, High: { } high }
        ? $" ({NumberText.Range(text.Value(low), text.Value(high), value => NumberText.Difference(value, 2))})"
        : "";

    private static string Cost(PairBudget budget, MoneyText text) => budget.Cost.PerHectare switch
    {
        0 => $"By what is stated, {budget.Treatment.Label} and {budget.Baseline.Label} cost the same.",
        < 0 => $"With {budget.Treatment.Label}, {text.Of(Size(budget))} is saved against {budget.Baseline.Label}.",
        _ => $"The added cost of {budget.Treatment.Label} over {budget.Baseline.Label} is {text.Of(budget.Cost)}.",
    };

    private static string BreakEven(PairBudget budget, Quantities.GrainYieldDifference breakEven, string price, MoneyText text) => budget.Cost.PerHectare switch
    {
        0 => $"At {price} net any gain of yield pays.",
        < 0 => $"At {price} net a loss of yield up to {text.Of(Quantities.GrainYieldDifference.FromKilogramsPerHectare(-breakEven.KilogramsPerHectare))} is paid for by the saving.",
        _ => $"At {price} net it takes {text.Of(breakEven)} more grain to pay for that.",
    };

    private static string Net(PairBudget budget, MoneyPoint at, MoneyText text) =>
        $"After its cost the yield difference found with {budget.Treatment.Label} against {budget.Baseline.Label} is worth {Worth(at, text)}{Range(budget, at, text)}.";

    private static string Worth(MoneyPoint at, MoneyText text) => $"{NumberText.Difference(text.Value(at.Net), 2)} {text.AreaUnit(at.Net.Currency)}";

    private static string Range(PairBudget budget, MoneyPoint at, MoneyText text) => at is { Low: { } low, High: { } high } && budget.Response is { } response
        ? $" ({response.Level} interval {NumberText.Range(text.Value(low), text.Value(high), value => NumberText.Difference(value, 2))}{Together(response.Comparisons)})"
        : "";

    private static string? Chance(PairBudget budget, MoneyPoint at) =>
        at is { Pays: { } pays, PaysWithMargin: { } margin } && budget.AboveZero is { } above
            ? $"{(budget.Response is { Comparisons: > 1 } ? "Of this comparison by itself, the" : "The")} chance that it pays is {Percent(pays)}{WithMargin(budget, margin)}; that yield is higher at all, {Percent(above)}."
            : null;

    // Several intervals of one trial are wider than each by itself would be.
    private static string Together(int comparisons) => comparisons switch
    {
        1 => "",
        2 => ", for both comparisons at once",
        _ => $", for all {NumberText.Count(comparisons)} comparisons at once",
    };

    // Without an added cost there is nothing to be repaid with a margin.
    private static string WithMargin(PairBudget budget, Quantities.Probability chance) =>
        budget.Cost.PerHectare > 0 ? $"; that it pays with {NumberText.Number(budget.Margin.Percent, 0)}\u00A0% to spare, {Percent(chance)}" : "";

    /// <summary>A chance: <c>92 %</c>, never rounded to none or all.</summary>
    internal static string Percent(Quantities.Probability chance) => chance.Value switch
    {
        > 0 and < 0.01 => "under 1\u00A0%",
        > 0.99 and < 1 => "over 99\u00A0%",
        var value => NumberText.Percent(value),
    };

    private static Quantities.MoneyPerArea Size(PairBudget budget) => Quantities.MoneyPerArea.FromPerHectare(Math.Abs(budget.Cost.PerHectare), budget.Cost.Currency);
}
