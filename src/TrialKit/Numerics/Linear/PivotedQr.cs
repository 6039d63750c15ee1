namespace TrialKit.Numerics.Linear;

/// <summary>Householder QR of a matrix with columns scaled to unit length and pivoted: X P = Q R, with its numerical rank.</summary>
/// <remarks>
/// Golub and Van Loan, Matrix Computations, algorithm 5.4.1. A column is taken as dependent when what the columns
/// before it leave of it is below 1e-11 of its length. Scaling makes that test free of units.
/// </remarks>
internal sealed class PivotedQr
{
    private const double DependentBelow = 1e-11;

    private readonly double[][] _columns;
    private readonly double[] _diagonal;
    private readonly double[] _scale;
    private readonly int[] _pivots;

    private PivotedQr(double[][] columns, double[] diagonal, double[] scale, int[] pivots, int rows, int rank)
    {
        (_columns, _diagonal, _scale, _pivots) = (columns, diagonal, scale, pivots);
        (Rows, Rank) = (rows, rank);
    }

    /// <summary>Rows of the matrix.</summary>
    public int Rows { get; }

    /// <summary>Columns of the matrix.</summary>
    public int Columns => _columns.Length;

    /// <summary>Independent columns found.</summary>
    public int Rank { get; }

    /// <summary>The columns found to depend on the others, by their index in the matrix.</summary>
    public IEnumerable<int> DependentColumns => _pivots.Skip(Rank).Order();

    /// <summary>Factors a matrix.</summary>
    /// <param name="matrix">Rows by columns, finite.</param>
    /// <returns>The factors.</returns>
    public static PivotedQr Factor(double[,] matrix)
    {
        var rows = matrix.GetLength(0);
        var count = matrix.GetLength(1);
        var columns = new double[count][];
        var scale = new double[count];
        for (var j = 0; j < count; j++)
        {
            columns[j] = new double[rows];
            for (var i = 0; i < rows; i++)
            {
                columns[j][i] = matrix[i, j];
            }

            Checks.Sample(columns[j], 1, nameof(matrix));
            var length = Length(columns[j], 0);
            scale[j] = length > 0 ? length : 1;
            for (var i = 0; i < rows; i++)
            {
                columns[j][i] /= scale[j];
            }
        }

        var pivots = Enumerable.Range(0, count).ToArray();
        var diagonal = new double[count];
        var rank = Reduce(columns, diagonal, scale, pivots, rows);
        return new PivotedQr(columns, diagonal, scale, pivots, rows, rank);
    }

    /// <summary>Q'y: its first <see cref="Rank"/> entries carry the fit, the rest the residual.</summary>
    /// <param name="y">One value per row.</param>
    /// <returns>Q'y, one value per row.</returns>
    public double[] Rotate(ReadOnlySpan<double> y)
    {
        var rotated = y.ToArray();
        for (var k = 0; k < Rank; k++)
        {
            Reflect(_columns[k], k, rotated);
        }

        return rotated;
    }

    /// <summary>The part of y that the columns leave, Q2 Q2'y.</summary>
    /// <param name="rotated">Q'y from <see cref="Rotate"/>.</param>
    /// <returns>Residuals, one per row.</returns>
    public double[] Residuals(ReadOnlySpan<double> rotated)
    {
        var residuals = rotated.ToArray();
        residuals.AsSpan(0, Rank).Clear();
        for (var k = Rank - 1; k >= 0; k--)
        {
            Reflect(_columns[k], k, residuals);
        }

        return residuals;
    }

    /// <summary>The first <see cref="Rank"/> columns of Q: an orthonormal basis of the matrix's columns.</summary>
    /// <returns>One array of <see cref="Rows"/> values per basis column.</returns>
    public double[][] Basis()
    {
        var basis = new double[Rank][];
        for (var c = 0; c < Rank; c++)
        {
            basis[c] = new double[Rows];
            basis[c][c] = 1;
            for (var k = Rank - 1; k >= 0; k--)
            {
                Reflect(_columns[k], k, basis[c]);
            }
        }

        return basis;
    }

    /// <summary>Least-squares coefficients; 0 for a dependent column.</summary>
    /// <param name="rotated">Q'y from <see cref="Rotate"/>.</param>
    /// <returns>One coefficient per column, in the matrix's order and units.</returns>
    public double[] Solve(ReadOnlySpan<double> rotated)
    {
        var solution = rotated[..Rank].ToArray();
        for (var k = Rank - 1; k >= 0; k--)
        {
            for (var j = k + 1; j < Rank; j++)
            {
                solution[k] -= _columns[j][k] * solution[j];
            }

            solution[k] /= _diagonal[k];
        }

        var coefficients = new double[Columns];
        for (var k = 0; k < Rank; k++)
        {
            coefficients[_pivots[k]] = solution[k] / _scale[k];
        }

        return coefficients;
    }

    /// <summary>(X'X)^-1 of the independent columns, with zeros for dependent ones: a generalised inverse.</summary>
    /// <returns>Columns by columns, in the matrix's order and units.</returns>
    public double[,] InverseCrossProduct()
    {
        var inverse = new double[Rank][];
        for (var c = 0; c < Rank; c++)
        {
            // Column c of R^-1 by back substitution.
            inverse[c] = new double[Rank];
            inverse[c][c] = 1 / _diagonal[c];
            for (var k = c - 1; k >= 0; k--)
            {
                var sum = 0.0;
                for (var j = k + 1; j <= c; j++)
                {
                    sum += _columns[j][k] * inverse[c][j];
                }

                inverse[c][k] = -sum / _diagonal[k];
            }
        }

        var product = new double[Columns, Columns];
        for (var a = 0; a < Rank; a++)
        {
            for (var b = a; b < Rank; b++)
            {
                var sum = 0.0;
                for (var c = b; c < Rank; c++)
                {
                    sum += inverse[c][a] * inverse[c][b];
                }

                sum /= _scale[a] * _scale[b];
                product[_pivots[a], _pivots[b]] = sum;
                product[_pivots[b], _pivots[a]] = sum;
            }
        }

        return product;
    }

    /// <summary>Twice the logarithm of the absolute product of R's diagonal: log det X'X of the independent columns.</summary>
    /// <returns>log det X'X.</returns>
    public double LogDeterminantOfCrossProduct()
    {
        var sum = 0.0;
        for (var k = 0; k < Rank; k++)
        {
            sum += Math.Log(Math.Abs(_diagonal[k])) + Math.Log(_scale[k]);
        }

        return 2 * sum;
    }

    private static int Reduce(double[][] columns, double[] diagonal, double[] scale, int[] pivots, int rows)
    {
        var limit = Math.Min(rows, columns.Length);
        for (var k = 0; k < limit; k++)
        {
            var (best, length) = LongestRest(columns, k);
            if (length <= DependentBelow)
            {
                return k;
            }

            (columns[k], columns[best]) = (columns[best], columns[k]);
            (scale[k], scale[best]) = (scale[best], scale[k]);
            (pivots[k], pivots[best]) = (pivots[best], pivots[k]);

            // The reflector v is kept in place, scaled so that v'v = 2; R's diagonal is kept apart.
            var v = columns[k];
            diagonal[k] = v[k] > 0 ? -length : length;
            v[k] -= diagonal[k];
            var factor = Math.Sqrt(2) / Length(v, k);
            for (var i = k; i < rows; i++)
            {
                v[i] *= factor;
            }

            for (var j = k + 1; j < columns.Length; j++)
            {
                Reflect(v, k, columns[j]);
            }
        }

        return limit;
    }

    private static (int Column, double Length) LongestRest(double[][] columns, int from)
    {
        var best = from;
        var length = -1.0;
        for (var j = from; j < columns.Length; j++)
        {
            // A tie goes to the earlier column, so that rounding does not reorder equal columns.
            var rest = Length(columns[j], from);
            if (rest > length * (1 + 1e-9))
            {
                (best, length) = (j, rest);
            }
        }

        return (best, length);
    }

    private static void Reflect(double[] v, int from, double[] target)
    {
        var dot = 0.0;
        for (var i = from; i < v.Length; i++)
        {
            dot += v[i] * target[i];
        }

        for (var i = from; i < v.Length; i++)
        {
            target[i] -= dot * v[i];
        }
    }

    private static double Length(double[] column, int from)
    {
        // Scaled, so that neither 1e-200 nor 1e200 leaves the range when squared.
        var largest = 0.0;
        for (var i = from; i < column.Length; i++)
        {
            largest = Math.Max(largest, Math.Abs(column[i]));
        }

        if (largest == 0)
        {
            return 0;
        }

        var sum = 0.0;
        for (var i = from; i < column.Length; i++)
        {
            var part = column[i] / largest;
            sum += part * part;
        }

        return largest * Math.Sqrt(sum);
    }
}
