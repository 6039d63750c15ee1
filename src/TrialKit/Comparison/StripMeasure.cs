using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>A measure with its value on each strip of the trial: one number a strip, since the strip is the unit.</summary>
/// <param name="Measure">What was measured.</param>
/// <param name="Values">One entry per strip, in the trial's order, those left out of the analysis included.</param>
public sealed record StripMeasure(Measure Measure, ImmutableArray<StripValue> Values)
{
    /// <summary>The strips that take part in the comparison: in the analysis and with a value.</summary>
    public IEnumerable<(StripValue Entry, double Value)> Analysed =>
        from entry in Values
        where entry.Strip.IsAnalysed && entry.Value is not null
        select (entry, entry.Value!.Value);
}
