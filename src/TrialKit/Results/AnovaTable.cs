using System.Collections.Immutable;

namespace TrialKit.Results;

/// <summary>An analysis of variance.</summary>
/// <param name="Rows">Its lines, error last.</param>
/// <param name="GrandMean">The mean of all values, in the unit.</param>
/// <param name="CoefficientOfVariation">100 times the root of the error mean square over the grand mean, %; null when the mean is zero.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Method">The procedure.</param>
public sealed record AnovaTable(ImmutableArray<AnovaRow> Rows, double GrandMean, double? CoefficientOfVariation, Unit Unit, Method Method)
{
    /// <summary>The line of the error.</summary>
    public AnovaRow Error => Rows[^1];

    /// <summary>The line of the treatments.</summary>
    public AnovaRow Treatments => Rows[^2];
}
