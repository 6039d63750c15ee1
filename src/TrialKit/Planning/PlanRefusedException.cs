using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Planning;

/// <summary>A plan cannot be drawn; the reasons say why and what to change.</summary>
/// <param name="reasons">The reasons.</param>
public sealed class PlanRefusedException(ImmutableArray<Finding> reasons)
    : InvalidOperationException(string.Join(Environment.NewLine, reasons.Select(reason => reason.Message)))
{
    /// <summary>The reasons.</summary>
    public ImmutableArray<Finding> Reasons { get; } = reasons;
}
