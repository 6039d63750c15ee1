using System.Globalization;
using TrialKit.Numerics.Linear;

namespace TrialKit.Numerics.Mixed;

/// <summary>The sums that REML needs of y = X b + sum Z_i u_i + e, in coordinates that keep their digits.</summary>
/// <remarks>X is replaced by an orthonormal basis and y by its least-squares residual with unit mean square.</remarks>
internal sealed class RemlProblem
{
    private readonly int[][] _levels;
    private readonly double[][] _basis;
    private readonly double[] _response;

    private RemlProblem(PivotedQr fixedPart, double[] ordinary, double[] residual, double scale, int[][] levels, int[] counts)
    {
        (FixedPart, Ordinary, Scale) = (fixedPart, ordinary, scale);
        (_levels, _basis) = (levels, fixedPart.Basis());
        _response = [.. residual.Select(value => value / scale)];
        First = new int[counts.Length + 1];
        for (var f = 0; f < counts.Length; f++)
        {
            First[f + 1] = First[f] + counts[f];
        }

        (CrossLevels, CrossFixed) = (Square(First[^1]), new double[First[^1]][]);
        for (var r = 0; r < CrossFixed.Length; r++)
        {
            CrossFixed[r] = new double[_basis.Length];
        }

        for (var i = 0; i < _response.Length; i++)
        {
            for (var f = 0; f < levels.Length; f++)
            {
                var row = First[f] + levels[f][i];
                for (var g = 0; g < levels.Length; g++)
                {
                    CrossLevels[row][First[g] + levels[g][i]]++;
                }

                for (var c = 0; c < _basis.Length; c++)
                {
                    CrossFixed[row][c] += _basis[c][i];
                }
            }
        }

        CrossResponse = Gather(_response);
    }

    /// <summary>QR of the fixed design.</summary>
    public PivotedQr FixedPart { get; }

    /// <summary>Q'y of ordinary least squares, in the response's unit.</summary>
    public double[] Ordinary { get; }

    /// <summary>Root mean square of the ordinary residuals: the unit in which REML is solved.</summary>
    public double Scale { get; }

    /// <summary>Where each factor's levels begin; the last entry is their number.</summary>
    public int[] First { get; }

    /// <summary>Number of random factors.</summary>
    public int Factors => First.Length - 1;

    /// <summary>Number of fixed coefficients.</summary>
    public int Fixed => _basis.Length;

    /// <summary>Observations less fixed coefficients.</summary>
    public int Degrees => _response.Length - _basis.Length;

    /// <summary>Z'Z.</summary>
    public double[][] CrossLevels { get; }

    /// <summary>Z'X, one row per level.</summary>
    public double[][] CrossFixed { get; }

    /// <summary>Z'y.</summary>
    public double[] CrossResponse { get; }

    /// <summary>Checks the data and sums them.</summary>
    /// <param name="response">One finite value per observation.</param>
    /// <param name="design">Fixed design, columns independent.</param>
    /// <param name="factors">Level of each observation for each random factor.</param>
    /// <returns>The problem; null when the fixed design explains every observation to rounding.</returns>
    /// <exception cref="ArgumentException">Sizes differ, a value is not finite, fixed columns depend on one another, or a factor cannot be told from error, from another factor or from the fixed part.</exception>
    public static RemlProblem? Of(ReadOnlySpan<double> response, double[,] design, IReadOnlyList<int[]> factors)
    {
        Checks.Sample(response, 1);
        var (rows, columns) = (design.GetLength(0), design.GetLength(1));
        if (rows != response.Length || columns == 0 || rows <= columns)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"A design of {rows} rows and {columns} columns came with {response.Length} responses; as many rows as responses and more than columns were expected."),
                nameof(design));
        }

        var counts = Counts(factors, rows);
        var qr = PivotedQr.Factor(design);
        if (qr.Rank < columns)
        {
            throw new ArgumentException(
                $"Of {columns} fixed columns, {string.Join(", ", qr.DependentColumns)} (counted from 0) depend on the others; independent columns were expected.", nameof(design));
        }

        var rotated = qr.Rotate(response);
        var residual = qr.Residuals(rotated);
        var sum = StableSums.SumOfSquares(residual);
        if (StableSums.IsRounding(sum, response))
        {
            return null;
        }

        var problem = new RemlProblem(qr, rotated, residual, Math.Sqrt(sum / rows), [.. factors], counts);
        problem.RequireDistinctFromFixed(factors);
        return problem;
    }

    /// <summary>Square matrix of zeros in rows.</summary>
    /// <param name="size">Rows and columns.</param>
    /// <returns>The matrix.</returns>
    public static double[][] Square(int size)
    {
        var rows = new double[size][];
        for (var i = 0; i < size; i++)
        {
            rows[i] = new double[size];
        }

        return rows;
    }

    /// <summary>Residuals of y from random and fixed effects.</summary>
    /// <param name="random">Effect of each level.</param>
    /// <param name="coefficients">Coefficients of the orthonormal basis.</param>
    /// <returns>One residual per observation.</returns>
    public double[] Residuals(double[] random, ReadOnlySpan<double> coefficients)
    {
        var residuals = (double[])_response.Clone();
        for (var i = 0; i < residuals.Length; i++)
        {
            for (var f = 0; f < _levels.Length; f++)
            {
                residuals[i] -= random[First[f] + _levels[f][i]];
            }

            for (var c = 0; c < _basis.Length; c++)
            {
                residuals[i] -= _basis[c][i] * coefficients[c];
            }
        }

        return residuals;
    }

    /// <summary>Z'v: sums of a vector over each level.</summary>
    /// <param name="values">One value per observation.</param>
    /// <returns>One sum per level.</returns>
    public double[] Gather(double[] values)
    {
        var sums = new double[First[^1]];
        for (var f = 0; f < _levels.Length; f++)
        {
            for (var i = 0; i < values.Length; i++)
            {
                sums[First[f] + _levels[f][i]] += values[i];
            }
        }

        return sums;
    }

    private static int[] Counts(IReadOnlyList<int[]> factors, int rows)
    {
        var counts = new int[factors.Count];
        for (var f = 0; f < counts.Length; f++)
        {
            counts[f] = LevelChecks.Count(factors[f], rows, string.Create(CultureInfo.InvariantCulture, $"random factor {f}"));
            if (counts[f] == rows)
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"Random factor {f} has a level for each of {rows} observations and cannot be told from error; fewer levels were expected."), nameof(factors));
            }

            for (var g = 0; g < f; g++)
            {
                if (counts[f] == counts[g] && FactorDesign.Cross(factors[f], factors[g]).Max() + 1 == counts[f])
                {
                    throw new ArgumentException(
                        string.Create(CultureInfo.InvariantCulture, $"Random factors {g} and {f} group the observations alike; factors that differ were expected."), nameof(factors));
                }
            }
        }

        return counts;
    }

    private void RequireDistinctFromFixed(IReadOnlyList<int[]> factors)
    {
        const double Nothing = 1e-10;
        for (var f = 0; f < factors.Count; f++)
        {
            var (left, all) = (0.0, 0.0);
            for (var r = First[f]; r < First[f + 1]; r++)
            {
                all += CrossLevels[r][r];
                left += CrossLevels[r][r] - StableSums.SumOfSquares(CrossFixed[r]);
            }

            if (left <= Nothing * all)
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"Random factor {f} is explained by the fixed columns; a factor that varies beyond them was expected."), nameof(factors));
            }
        }
    }
}
