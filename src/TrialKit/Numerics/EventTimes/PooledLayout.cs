namespace TrialKit.Numerics.EventTimes;

/// <summary>Where each coefficient of a pooled fit stands: for each of logit d, ln s and ln e an intercept, followed by the covariates that move it.</summary>
internal sealed class PooledLayout
{
    private readonly int[] start = new int[3];
    private readonly int[] columns = new int[3];
    private readonly bool shareFixed;

    /// <summary>Lays out the coefficients.</summary>
    public PooledLayout(EventTimeShape shape, PooledEffects effects, int covariates, bool shareFixed)
    {
        Shape = shape;
        this.shareFixed = shareFixed;
        columns[0] = shareFixed ? 0 : 1 + (effects.HasFlag(PooledEffects.Share) ? covariates : 0);
        columns[1] = 1 + (effects.HasFlag(PooledEffects.Slope) ? covariates : 0);
        columns[2] = 1 + (effects.HasFlag(PooledEffects.Location) ? covariates : 0);
        start[1] = columns[0];
        start[2] = columns[0] + columns[1];
    }

    /// <summary>The shape of F0.</summary>
    public EventTimeShape Shape { get; }

    /// <summary>Coefficients.</summary>
    public int Parameters => start[2] + columns[2];

    /// <summary>How many of the first coefficients are of logit d.</summary>
    public int Logits => start[1];

    /// <summary>Sets the intercepts.</summary>
    public void SetIntercepts(Span<double> point, double a, double u, double v)
    {
        if (columns[0] > 0)
        {
            point[0] = a;
        }

        point[start[1]] = u;
        point[start[2]] = v;
    }

    /// <summary>Position of a coefficient: column 0 is the intercept; -1 if it is not estimated.</summary>
    public int IndexOf(PooledEffects part, int column)
    {
        var p = part switch
        {
            PooledEffects.Share => 0,
            PooledEffects.Slope => 1,
            PooledEffects.Location => 2,
            _ => throw new ArgumentOutOfRangeException(nameof(part), part, "Found no single part of the curve; expected share, slope or location."),
        };
        ArgumentOutOfRangeException.ThrowIfNegative(column);
        return column < columns[p] ? start[p] + column : -1;
    }

    /// <summary>-1 for coefficients of ln s where b is 1/s, so that the reader sees ln b; otherwise 1.</summary>
    public double SignOf(int index) => Shape == EventTimeShape.LogNormal && index >= start[1] && index < start[2] ? -1.0 : 1.0;

    /// <summary>(logit d, ln s, ln e) at covariates; logit d is infinite where the share is fixed at 1.</summary>
    public (double A, double U, double V) At(ReadOnlySpan<double> point, IReadOnlyList<double> x) =>
        (columns[0] == 0 ? double.PositiveInfinity : Predict(point, 0, x), Predict(point, 1, x), Predict(point, 2, x));

    /// <summary>Adds a strip's log-likelihood derivatives, carried over from its own three parameters to the coefficients.</summary>
    public double Accumulate(ReadOnlySpan<double> point, EventTimeCluster cluster, Span<double> gradient, Span<double> hessian)
    {
        Span<double> own = stackalloc double[3];
        Span<double> bend = stackalloc double[9];
        own.Clear();
        bend.Clear();
        var x = cluster.Covariates;
        var (a, u, v) = At(point, x);
        var value = EventTimeLikelihood.Accumulate(cluster.Counts, Shape, shareFixed, a, u, v, own, bend);
        for (var p = 0; p < 3; p++)
        {
            for (var i = 0; i < columns[p]; i++)
            {
                var row = start[p] + i;
                gradient[row] += own[p] * Design(x, i);
                for (var q = 0; q < 3; q++)
                {
                    for (var j = 0; j < columns[q]; j++)
                    {
                        hessian[(row * Parameters) + start[q] + j] += bend[(p * 3) + q] * Design(x, i) * Design(x, j);
                    }
                }
            }
        }

        return value;
    }

    /// <summary>A strip's score.</summary>
    public double[] ScoreOf(ReadOnlySpan<double> point, EventTimeCluster cluster)
    {
        var score = new double[Parameters];
        Accumulate(point, cluster, score, new double[Parameters * Parameters]);
        return score;
    }

    private double Predict(ReadOnlySpan<double> point, int part, IReadOnlyList<double> x)
    {
        var sum = 0.0;
        for (var i = 0; i < columns[part]; i++)
        {
            sum += point[start[part] + i] * Design(x, i);
        }

        return sum;
    }

    private static double Design(IReadOnlyList<double> x, int column) => column == 0 ? 1.0 : x[column - 1];
}
