namespace TrialKit.Numerics.Glm;

/// <summary>
/// A design split for weighted least squares into columns of which no two are nonzero in the same row, as those of blocks,
/// and the rest. The disjoint ones are taken out of the rest in closed form, which leaves a small system however many
/// blocks there are.
/// </summary>
/// <remarks>Regression of what is left on what is left gives the coefficients of the whole (Frisch and Waugh 1933; Lovell 1963).</remarks>
internal sealed class GlmDesign
{
    // The rest of a column, by its length, below which the disjoint columns explain it.
    private const double DependentBelow = 1e-11;

    private readonly double[,] _design;
    private readonly int[] _disjoint;
    private readonly int[] _rest;
    private readonly int[] _owner;

    private GlmDesign(double[,] design, int[] disjoint, int[] rest, int[] owner) => (_design, _disjoint, _rest, _owner) = (design, disjoint, rest, owner);

    /// <summary>Observations.</summary>
    public int Rows => _design.GetLength(0);

    /// <summary>Columns.</summary>
    public int Columns => _design.GetLength(1);

    /// <summary>Splits a design.</summary>
    /// <param name="design">Observations by columns, finite.</param>
    /// <returns>The split design.</returns>
    public static GlmDesign Of(double[,] design)
    {
        var (rows, columns) = (design.GetLength(0), design.GetLength(1));
        var owner = new int[rows];
        Array.Fill(owner, -1);
        List<int> disjoint = [], rest = [];
        for (var j = 0; j < columns; j++)
        {
            var (free, empty) = (true, true);
            for (var i = 0; i < rows; i++)
            {
                Checks.Finite(design[i, j], nameof(design));
                empty &= design[i, j] == 0;
                free &= design[i, j] == 0 || owner[i] < 0;
            }

            if (empty || !free)
            {
                rest.Add(j);
                continue;
            }

            for (var i = 0; i < rows; i++)
            {
                owner[i] = design[i, j] == 0 ? owner[i] : disjoint.Count;
            }

            disjoint.Add(j);
        }

        return new GlmDesign(design, [.. disjoint], [.. rest], owner);
    }

    /// <summary>The columns that depend on the others, by their index.</summary>
    /// <returns>Indices in order; empty when all are independent.</returns>
    public IReadOnlyList<int> DependentColumns()
    {
        var ones = new double[Rows];
        Array.Fill(ones, 1);
        var weighted = Weigh(ones);
        HashSet<int> dependent = [];
        for (var k = 0; k < _rest.Length; k++)
        {
            var (left, whole) = (0.0, 0.0);
            for (var i = 0; i < Rows; i++)
            {
                left += weighted.Rest[i, k] * weighted.Rest[i, k];
                whole += _design[i, _rest[k]] * _design[i, _rest[k]];
            }

            if (Math.Sqrt(left) <= DependentBelow * Math.Sqrt(whole))
            {
                dependent.Add(_rest[k]);
            }
        }

        dependent.UnionWith(weighted.Qr is { } qr ? qr.DependentColumns.Select(k => _rest[k]) : []);
        return [.. dependent.Order()];
    }

    /// <summary>The linear predictor at coefficients.</summary>
    /// <param name="coefficients">One per column.</param>
    /// <returns>One value per observation.</returns>
    public double[] Predict(ReadOnlySpan<double> coefficients)
    {
        var linear = new double[Rows];
        for (var i = 0; i < Rows; i++)
        {
            if (_owner[i] >= 0)
            {
                var column = _disjoint[_owner[i]];
                linear[i] = _design[i, column] * coefficients[column];
            }

            foreach (var column in _rest)
            {
                linear[i] += _design[i, column] * coefficients[column];
            }
        }

        return linear;
    }

    /// <summary>The design under weights.</summary>
    /// <param name="roots">Square root of each observation's weight, above 0.</param>
    /// <returns>The weighted design, ready to solve.</returns>
    public WeightedDesign Weigh(double[] roots)
    {
        var squares = new double[_disjoint.Length];
        for (var i = 0; i < Rows; i++)
        {
            if (_owner[i] >= 0)
            {
                var value = Owned(roots, i);
                squares[_owner[i]] += value * value;
            }
        }

        var slopes = new double[_disjoint.Length, _rest.Length];
        var rest = new double[Rows, _rest.Length];
        var column = new double[Rows];
        for (var k = 0; k < _rest.Length; k++)
        {
            for (var i = 0; i < Rows; i++)
            {
                column[i] = roots[i] * _design[i, _rest[k]];
            }

            var slope = TakeOut(roots, squares, column);
            for (var c = 0; c < slope.Length; c++)
            {
                slopes[c, k] = slope[c];
            }

            for (var i = 0; i < Rows; i++)
            {
                rest[i, k] = column[i];
            }
        }

        return new WeightedDesign(this, roots, squares, slopes, rest);
    }

    /// <summary>Takes the disjoint columns out of a weighted one, in place.</summary>
    /// <param name="roots">Square roots of weights.</param>
    /// <param name="squares">Weighted sum of squares of each disjoint column.</param>
    /// <param name="values">One value per observation.</param>
    /// <returns>The coefficient of each disjoint column.</returns>
    internal double[] TakeOut(double[] roots, double[] squares, double[] values)
    {
        var slopes = new double[_disjoint.Length];
        for (var i = 0; i < Rows; i++)
        {
            if (_owner[i] >= 0)
            {
                slopes[_owner[i]] += Owned(roots, i) * values[i] / squares[_owner[i]];
            }
        }

        for (var i = 0; i < Rows; i++)
        {
            if (_owner[i] >= 0)
            {
                values[i] -= slopes[_owner[i]] * Owned(roots, i);
            }
        }

        return slopes;
    }

    /// <summary>Parts a value per column into those of the disjoint columns and those of the rest.</summary>
    internal (double[] Disjoint, double[] Others) Part(ReadOnlySpan<double> values)
    {
        var (disjoint, rest) = (new double[_disjoint.Length], new double[_rest.Length]);
        for (var c = 0; c < disjoint.Length; c++)
        {
            disjoint[c] = values[_disjoint[c]];
        }

        for (var k = 0; k < rest.Length; k++)
        {
            rest[k] = values[_rest[k]];
        }

        return (disjoint, rest);
    }

    /// <summary>Joins what <see cref="Part"/> parted.</summary>
    internal double[] Join(double[] disjoint, double[] rest)
    {
        var values = new double[Columns];
        for (var c = 0; c < disjoint.Length; c++)
        {
            values[_disjoint[c]] = disjoint[c];
        }

        for (var k = 0; k < rest.Length; k++)
        {
            values[_rest[k]] = rest[k];
        }

        return values;
    }

    private double Owned(double[] roots, int i) => roots[i] * _design[i, _disjoint[_owner[i]]];
}
