namespace TrialKit.Numerics.Mixed;

/// <summary>Cholesky factor of a symmetric positive definite matrix, A = L L', in rows of the lower triangle.</summary>
/// <remarks>Zeros before the first entry of a row stay zero in L and are passed over (George and Liu 1981, the envelope).</remarks>
internal sealed class Cholesky
{
    private readonly double[][] _rows;
    private readonly int[] _first;

    private Cholesky(double[][] rows, int[] first) => (_rows, _first) = (rows, first);

    /// <summary>log det A.</summary>
    public double LogDeterminant => 2 * _rows.Select((row, i) => Math.Log(row[i])).Sum();

    /// <summary>Factors a matrix.</summary>
    /// <param name="matrix">Symmetric, in full rows; only the lower triangle is read.</param>
    /// <returns>The factor; null when the matrix is not positive definite to rounding.</returns>
    public static Cholesky? TryFactor(double[][] matrix)
    {
        const double Rounding = 1e-14;
        var rows = new double[matrix.Length][];
        var first = new int[matrix.Length];
        for (var i = 0; i < matrix.Length; i++)
        {
            var row = rows[i] = new double[i + 1];
            while (first[i] < i && matrix[i][first[i]] == 0)
            {
                first[i]++;
            }

            for (var j = first[i]; j <= i; j++)
            {
                var from = Math.Max(first[i], first[j]);
                row[j] = matrix[i][j] - Dot(row.AsSpan(from..), rows[j].AsSpan(from..), Math.Max(0, j - from));
                if (j < i)
                {
                    row[j] /= rows[j][j];
                }
            }

            if (!(row[i] > Rounding * Math.Abs(matrix[i][i])))
            {
                return null;
            }

            row[i] = Math.Sqrt(row[i]);
        }

        return new Cholesky(rows, first);
    }

    /// <summary>L^-1 b.</summary>
    /// <param name="right">b; not changed.</param>
    /// <returns>The solution.</returns>
    public double[] Forward(ReadOnlySpan<double> right)
    {
        var x = right.ToArray();
        for (var i = 0; i < x.Length; i++)
        {
            var from = _first[i];
            x[i] = (x[i] - Dot(x.AsSpan(from..), _rows[i].AsSpan(from..), i - from)) / _rows[i][i];
        }

        return x;
    }

    /// <summary>A^-1 b.</summary>
    /// <param name="right">b; not changed.</param>
    /// <returns>The solution.</returns>
    public double[] Solve(ReadOnlySpan<double> right)
    {
        var x = Forward(right);
        for (var i = x.Length - 1; i >= 0; i--)
        {
            x[i] /= _rows[i][i];
            for (var j = _first[i]; j < i; j++)
            {
                x[j] -= _rows[i][j] * x[i];
            }
        }

        return x;
    }

    /// <summary>Sum of the products of the first entries of two rows.</summary>
    /// <param name="left">A row.</param>
    /// <param name="right">Another.</param>
    /// <param name="count">How many entries.</param>
    /// <returns>The sum.</returns>
    public static double Dot(ReadOnlySpan<double> left, ReadOnlySpan<double> right, int count)
    {
        // Four running sums in a fixed order: quick, and the same bits on every machine, which hardware vectors are not.
        double a = 0, b = 0, c = 0, d = 0;
        var i = 0;
        for (; i <= count - 4; i += 4)
        {
            a += left[i] * right[i];
            b += left[i + 1] * right[i + 1];
            c += left[i + 2] * right[i + 2];
            d += left[i + 3] * right[i + 3];
        }

        var total = a + b + (c + d);
        for (; i < count; i++)
        {
            total += left[i] * right[i];
        }

        return total;
    }
}
