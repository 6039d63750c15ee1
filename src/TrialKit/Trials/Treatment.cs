using System.Collections.Immutable;
using TrialKit.Quantities;

namespace TrialKit.Trials;

/// <summary>One of the things compared.</summary>
/// <param name="Name">The name that tables use.</param>
/// <param name="Label">The name as printed.</param>
/// <param name="Cost">Cost added against the control; null when not given.</param>
/// <param name="Products">What was put near the seed, when that is the treatment; may be empty.</param>
public sealed record Treatment(string Name, string Label, MoneyPerArea? Cost, ImmutableArray<Product> Products)
{
    /// <summary>Costs saved against the control; null when not given.</summary>
    public MoneyPerArea? Saved { get; init; }

    /// <summary>Machines bought for it; may be empty.</summary>
    public ImmutableArray<Machine> Machines { get; init; } = [];

    /// <summary>Working time added against the control, hours per hectare; null when not given.</summary>
    public double? HoursPerHectare { get; init; }
}
