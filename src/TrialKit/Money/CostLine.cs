using TrialKit.Quantities;

namespace TrialKit.Money;

/// <summary>One line of a budget, per area.</summary>
/// <param name="Kind">What sort of line: <c>stated</c>, <c>saved</c>, <c>product</c>, <c>machine</c> or <c>time</c>.</param>
/// <param name="What">What it is for.</param>
/// <param name="Amount">Above zero for a cost, below for a saving.</param>
public sealed record CostLine(string Kind, string What, MoneyPerArea Amount);
