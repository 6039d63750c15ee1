namespace TrialKit.Numerics.EventTimes;

/// <summary>Dense symmetric systems of a few unknowns, by Cholesky on spans the caller owns.</summary>
internal static class SmallSystem
{
    /// <summary>Solves (sign A + shift I) x = b if the matrix is positive definite.</summary>
    /// <param name="matrix">A, n x n, row major, symmetric.</param>
    /// <param name="sign">1, or -1 for a matrix that should be negative definite.</param>
    /// <param name="shift">Added to the diagonal.</param>
    /// <param name="right">b, n.</param>
    /// <param name="factor">Work space, n x n.</param>
    /// <param name="solution">x, n.</param>
    /// <returns>False, and no solution, if the matrix is not positive definite.</returns>
    public static bool SolvePositive(ReadOnlySpan<double> matrix, double sign, double shift, ReadOnlySpan<double> right, Span<double> factor, Span<double> solution)
    {
        if (!Factor(matrix, sign, shift, right.Length, factor))
        {
            return false;
        }

        right.CopyTo(solution);
        Substitute(factor, right.Length, solution);
        return true;
    }

    /// <summary>Inverse of sign A if that is positive definite and well enough conditioned to trust; otherwise null.</summary>
    private static double[]? InversePositive(ReadOnlySpan<double> matrix, double sign, int n)
    {
        Span<double> factor = stackalloc double[n * n];
        if (!Factor(matrix, sign, 0.0, n, factor))
        {
            return null;
        }

        // What is left of each pivot against its diagonal is 1 - R^2 on the others: near zero, the variable is not identified.
        for (var i = 0; i < n; i++)
        {
            if (factor[(i * n) + i] * factor[(i * n) + i] < 1e-10 * sign * matrix[(i * n) + i])
            {
                return null;
            }
        }

        var inverse = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            var column = inverse.AsSpan(i * n, n);
            column[i] = 1.0;
            Substitute(factor, n, column);
        }

        return inverse;
    }

    /// <summary>The inverse of an information matrix on log and logit scales, or null where it tells nothing about some log.</summary>
    /// <param name="matrix">The Hessian, n x n.</param>
    /// <param name="n">Parameters.</param>
    /// <param name="logits">How many of the first parameters are logits: near a boundary their errors are large and mean little, so they are let be.</param>
    public static double[]? InformativeInverse(ReadOnlySpan<double> matrix, int n, int logits)
    {
        var inverse = InversePositive(matrix, -1.0, n);
        for (var i = logits; inverse is not null && i < n; i++)
        {
            // A standard error above ten on a log scale is a factor of more than twenty thousand.
            if (!(inverse[(i * n) + i] < 100.0))
            {
                return null;
            }
        }

        return inverse;
    }

    private static bool Factor(ReadOnlySpan<double> matrix, double sign, double shift, int n, Span<double> factor)
    {
        for (var j = 0; j < n; j++)
        {
            for (var i = j; i < n; i++)
            {
                var sum = (sign * matrix[(i * n) + j]) + (i == j ? shift : 0.0);
                for (var k = 0; k < j; k++)
                {
                    sum -= factor[(i * n) + k] * factor[(j * n) + k];
                }

                if (i > j)
                {
                    factor[(i * n) + j] = sum / factor[(j * n) + j];
                }
                else if (sum > 1e-14 * Math.Abs(matrix[(i * n) + i]) && double.IsFinite(sum))
                {
                    factor[(i * n) + i] = Math.Sqrt(sum);
                }
                else
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static void Substitute(ReadOnlySpan<double> factor, int n, Span<double> x)
    {
        for (var i = 0; i < n; i++)
        {
            for (var k = 0; k < i; k++)
            {
                x[i] -= factor[(i * n) + k] * x[k];
            }

            x[i] /= factor[(i * n) + i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++)
            {
                x[i] -= factor[(k * n) + i] * x[k];
            }

            x[i] /= factor[(i * n) + i];
        }
    }
}
