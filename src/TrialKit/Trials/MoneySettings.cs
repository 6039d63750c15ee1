using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>What a trial says of money beside the costs of its treatments.</summary>
public sealed record MoneySettings
{
    /// <summary>The price of grain before hauling and drying; null when not given.</summary>
    public GrainPrice? PaidPrice { get; init; }

    /// <summary>Hauling an extra weight of grain; null when not given or nothing.</summary>
    public GrainPrice? Hauling { get; init; }

    /// <summary>Drying an extra weight of grain; null when not given or nothing.</summary>
    public GrainPrice? Drying { get; init; }

    /// <summary>What an hour of work costs; null when not given.</summary>
    public double? WagePerHour { get; init; }

    /// <summary>The currency of that wage as written; null without one.</summary>
    public string? WageCurrency { get; init; }

    /// <summary>By how much a difference is to pay more than its cost before it is worth the trouble: 25 % of the cost unless given.</summary>
    public Ratio Margin { get; init; } = Ratio.FromPercent(25);
}
