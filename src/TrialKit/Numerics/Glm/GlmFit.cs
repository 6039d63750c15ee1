using System.Collections.Immutable;
using System.Globalization;

namespace TrialKit.Numerics.Glm;

/// <summary>A generalised linear model of counts by iteratively reweighted least squares, with the dispersion that the counts show.</summary>
/// <remarks>
/// McCullagh and Nelder 1989, chapters 2, 4, 6 and 9. The dispersion is Pearson's chi-square by its degrees of freedom
/// and multiplies the variance (quasi-likelihood, Wedderburn 1974). One observation is one strip.
/// </remarks>
internal sealed class GlmFit
{
    private readonly WeightedDesign? _weighted;

    private GlmFit(GlmStatus status, int observations, int columns)
    {
        Status = status;
        DegreesOfFreedom = observations - columns;
        Columns = columns;
    }

    private GlmFit(GlmStatus status, GlmCounts counts, GlmStep step, WeightedDesign? weighted)
        : this(status, counts.Observations, step.Coefficients.Length)
    {
        Deviance = step.Deviance;
        if (status != GlmStatus.Converged)
        {
            return;
        }

        Coefficients = [.. step.Coefficients];
        Fitted = [.. step.Expected];
        PearsonChiSquare = counts.PearsonChiSquare(step);
        _weighted = weighted;
    }

    /// <summary>How the fit ended. Coefficients exist when it converged.</summary>
    public GlmStatus Status { get; }

    /// <summary>One coefficient per column, on the link's scale; empty unless converged.</summary>
    public ImmutableArray<double> Coefficients { get; } = [];

    /// <summary>Expected count of each observation; empty unless converged.</summary>
    public ImmutableArray<double> Fitted { get; } = [];

    /// <summary>Observations less columns.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>Deviance; where a coefficient runs to infinity its limit, to nine digits.</summary>
    public double Deviance { get; }

    /// <summary>Pearson's chi-square; null unless converged.</summary>
    public double? PearsonChiSquare { get; }

    /// <summary>Pearson's chi-square by degrees of freedom: 1 for counts that scatter as chance has it. Null unless converged and with degrees of freedom.</summary>
    public double? Dispersion => DegreesOfFreedom > 0 ? PearsonChiSquare / DegreesOfFreedom : null;

    /// <summary>Columns of the design.</summary>
    internal int Columns { get; }

    /// <summary>Fits counts.</summary>
    /// <param name="family">What is counted.</param>
    /// <param name="design">Observations by columns, an intercept included; columns independent.</param>
    /// <param name="counts">Count of each observation, 0 or more, and no more than its size for a binomial.</param>
    /// <param name="sizes">Out of how many (binomial), or exposure (Poisson), of each observation, above 0.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentException">Sizes differ, a value is out of its range, or columns depend on one another.</exception>
    public static GlmFit Of(GlmFamily family, double[,] design, ReadOnlySpan<double> counts, ReadOnlySpan<double> sizes)
    {
        var data = GlmCounts.Of(family, counts, sizes);
        var (rows, columns) = (design.GetLength(0), design.GetLength(1));
        if (rows != data.Observations || columns == 0 || rows < columns)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"A design of {rows} rows and {columns} columns came with {data.Observations} counts; as many rows as counts and no fewer than columns were expected."),
                nameof(design));
        }

        var split = GlmDesign.Of(design);
        if (split.DependentColumns() is { Count: > 0 } dependent)
        {
            throw new ArgumentException(
                $"Of {columns} design columns, {string.Join(", ", dependent)} (counted from 0) depend on the others; independent columns were expected.", nameof(design));
        }

        if (data.IsAllZero || data.IsAllFull)
        {
            return new GlmFit(data.IsAllZero ? GlmStatus.AllZero : GlmStatus.AllFull, rows, columns);
        }

        return Iterate(data, split);
    }

    /// <summary>A linear combination of the coefficients, on the link's scale.</summary>
    /// <param name="weights">One weight per column.</param>
    /// <param name="dispersion">By how much the variance exceeds that of the family; <see cref="Dispersion"/>, or 1.</param>
    /// <returns>Estimate and standard error; null unless converged.</returns>
    /// <exception cref="ArgumentException">Another number of weights than columns.</exception>
    public (double Estimate, double StandardError)? Contrast(ReadOnlySpan<double> weights, double dispersion)
    {
        if (weights.Length != Columns)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{weights.Length} weights were found; {Columns} were expected, one for each column."), nameof(weights));
        }

        Checks.Finite(dispersion);
        if (_weighted is null)
        {
            return null;
        }

        var estimate = 0.0;
        for (var i = 0; i < weights.Length; i++)
        {
            estimate += weights[i] * Coefficients[i];
        }

        return (estimate, Math.Sqrt(dispersion * _weighted.Variance(weights)));
    }

    private static GlmFit Iterate(GlmCounts data, GlmDesign design)
    {
        const int MostSteps = 100;

        // On the link's scale. Steps shrink quadratically, so the one after this would be rounding.
        const double Settled = 1e-10;
        var step = data.At(design, Solve(data, design, data.Start(design.Columns)));
        var status = GlmStatus.NotConverged;
        for (var i = 0; i < MostSteps && status == GlmStatus.NotConverged; i++)
        {
            var next = Downhill(data, design, step);
            var moved = next.Linear.Zip(step.Linear, (a, b) => Math.Abs(a - b)).Max();
            step = next;
            status = data.HasFittedBound(step) ? GlmStatus.Separated
                : moved <= Settled ? GlmStatus.Converged
                : GlmStatus.NotConverged;
        }

        return new GlmFit(status, data, step, status == GlmStatus.Converged ? design.Weigh(Roots(data, step)) : null);
    }

    private static GlmStep Downhill(GlmCounts data, GlmDesign design, GlmStep step)
    {
        // The deviance is a small sum of large terms: a rise within its rounding is none.
        const double Rounding = 1e-10;
        const int MostHalvings = 30;
        var next = data.At(design, Solve(data, design, step));
        for (var halving = 0; halving < MostHalvings && !(next.Deviance <= step.Deviance + (Rounding * (1 + step.Deviance))); halving++)
        {
            next = data.At(design, [.. next.Coefficients.Zip(step.Coefficients, (a, b) => (a + b) / 2)]);
        }

        return next;
    }

    private static double[] Solve(GlmCounts data, GlmDesign design, GlmStep step)
    {
        var roots = Roots(data, step);
        var working = new double[data.Observations];
        for (var i = 0; i < working.Length; i++)
        {
            working[i] = (roots[i] * step.Linear[i]) + (data.Excess(step, i) / roots[i]);
        }

        return design.Weigh(roots).Solve(working);
    }

    private static double[] Roots(GlmCounts data, GlmStep step)
    {
        var roots = new double[data.Observations];
        for (var i = 0; i < roots.Length; i++)
        {
            roots[i] = Math.Sqrt(data.Weight(step, i));
        }

        return roots;
    }
}
