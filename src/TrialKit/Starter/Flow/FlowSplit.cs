using System.Collections.Immutable;
using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Starter.Flow;

/// <summary>How outlets of different size share a flow at one common pressure.</summary>
public static class FlowSplit
{
    /// <summary>Each outlet's flow: the whole times its coefficient over the sum of coefficients.</summary>
    /// <param name="flow">The whole flow, above zero.</param>
    /// <param name="coefficients">The outlets' flow coefficients (flow at one unit of pressure, any unit), each above zero; one or more.</param>
    public static ImmutableArray<VolumeFlow> Of(VolumeFlow flow, IReadOnlyList<double> coefficients)
    {
        ArgumentNullException.ThrowIfNull(coefficients);
        Guard.Positive(flow.LitersPerMinute, "flow, L/min", nameof(flow));
        if (coefficients.Count == 0)
        {
            throw new ArgumentException("No outlet was found; one or more were expected.", nameof(coefficients));
        }

        var sum = coefficients.Sum(coefficient => Guard.Positive(coefficient, "an outlet's coefficient", nameof(coefficients)));
        return [.. coefficients.Select(coefficient => VolumeFlow.FromLitersPerMinute(flow.LitersPerMinute * coefficient / sum))];
    }
}
