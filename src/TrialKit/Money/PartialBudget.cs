namespace TrialKit.Money;

/// <summary>The four sides of a partial budget, in one unit of money, each 0 or more.</summary>
/// <param name="AddedReturns">What more is earned.</param>
/// <param name="ReducedCosts">What is saved.</param>
/// <param name="AddedCosts">What more is spent.</param>
/// <param name="ReducedReturns">What less is earned.</param>
public readonly record struct PartialBudget(double AddedReturns, double ReducedCosts, double AddedCosts, double ReducedReturns)
{
    /// <summary>(Added returns + reduced costs) - (added costs + reduced returns).</summary>
    public double Net => AddedReturns + ReducedCosts - (AddedCosts + ReducedReturns);
}
