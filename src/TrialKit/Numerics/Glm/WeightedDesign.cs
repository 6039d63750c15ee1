using TrialKit.Numerics.Linear;

namespace TrialKit.Numerics.Glm;

/// <summary>A <see cref="GlmDesign"/> under weights: solves for coefficients, and gives variances of their combinations.</summary>
/// <param name="design">The design.</param>
/// <param name="roots">Square root of each observation's weight.</param>
/// <param name="squares">Weighted sum of squares of each disjoint column.</param>
/// <param name="slopes">Disjoint columns by the rest: the coefficients with which they were taken out of it.</param>
/// <param name="rest">Observations by the rest's columns: what is left of them, weighted.</param>
internal sealed class WeightedDesign(GlmDesign design, double[] roots, double[] squares, double[,] slopes, double[,] rest)
{
    /// <summary>What is left of the rest's columns, weighted: observations by columns.</summary>
    public double[,] Rest => rest;

    /// <summary>Factors of what is left; null when every column is disjoint.</summary>
    public PivotedQr? Qr { get; } = rest.GetLength(1) > 0 ? PivotedQr.Factor(rest) : null;

    /// <summary>The coefficients that fit weighted values best.</summary>
    /// <param name="values">One value per observation, weighted; what the disjoint columns explain is taken out in place.</param>
    /// <returns>One coefficient per column of the design.</returns>
    public double[] Solve(double[] values)
    {
        var means = design.TakeOut(roots, squares, values);
        double[] coefficients = Qr is { } qr ? qr.Solve(qr.Rotate(values)) : [];
        for (var c = 0; c < means.Length; c++)
        {
            for (var k = 0; k < coefficients.Length; k++)
            {
                means[c] -= slopes[c, k] * coefficients[k];
            }
        }

        return design.Join(means, coefficients);
    }

    /// <summary>The variance of a combination of coefficients, for weights that are one over variances.</summary>
    /// <param name="combination">One factor per column of the design.</param>
    /// <returns>c'(X'WX)^-1 c.</returns>
    public double Variance(ReadOnlySpan<double> combination)
    {
        var (disjoint, others) = design.Part(combination);
        var variance = 0.0;
        for (var c = 0; c < disjoint.Length; c++)
        {
            variance += disjoint[c] * disjoint[c] / squares[c];
            for (var k = 0; k < others.Length; k++)
            {
                others[k] -= slopes[c, k] * disjoint[c];
            }
        }

        var inverse = Qr?.InverseCrossProduct();
        for (var a = 0; a < others.Length; a++)
        {
            for (var b = 0; b < others.Length; b++)
            {
                variance += others[a] * inverse![a, b] * others[b];
            }
        }

        return variance;
    }
}
