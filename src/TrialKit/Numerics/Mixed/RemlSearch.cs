namespace TrialKit.Numerics.Mixed;

/// <summary>Finds the variance ratios of least REML criterion, each 0 or more: Newton steps with exact derivatives, straight to a bound and along it.</summary>
internal static class RemlSearch
{
    /// <summary>A ratio as large as this means that error is nil beside the factor: the criterion has no minimum.</summary>
    public const double LargestRatio = 1e9;

    private const int MostSteps = 200;

    // In units of deviance: a step that promises less changes nothing that could be reported.
    private const double Negligible = 1e-13;

    // In units of deviance: the criterion is a small difference of large logarithms and carries some 1e-12 of rounding,
    // so a step that raises it by less is taken; this close to the minimum Newton's step is better than the comparison.
    private const double CriterionRounding = 1e-10;

    private static readonly double[] Starts = [0, 0.01, 0.1, 1, 10, 100, 1e3, 1e4];

    /// <summary>Searches from the best of a few common ratios.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="hasConverged">Whether no step promises anything any more, within the largest ratio.</param>
    /// <returns>The best point found.</returns>
    public static RemlPoint Minimise(RemlProblem problem, out bool hasConverged)
    {
        var point = Starts
            .Select(start => RemlPoint.At(problem, [.. Enumerable.Repeat(start, problem.Factors)]))
            .OfType<RemlPoint>()
            .MinBy(candidate => candidate.Criterion)!;
        hasConverged = problem.Factors == 0;
        for (var step = 0; step < MostSteps && !hasConverged && point.Ratios.Max() < LargestRatio; step++)
        {
            var gradient = point.Gradient();
            var free = Enumerable.Range(0, gradient.Length).Where(f => point.Ratios[f] > 0 || gradient[f] < 0).ToArray();
            var direction = Direction(point, gradient, free);
            var promise = -free.Sum(f => gradient[f] * direction[f]);
            hasConverged = promise <= Negligible;
            if (Along(problem, point, direction) is not { } next)
            {
                // No descent is left within rounding; that is the minimum if the promise is within it as well.
                hasConverged = promise <= CriterionRounding;
                break;
            }

            point = next;
        }

        return point;
    }

    private static double[] Direction(RemlPoint point, double[] gradient, int[] free)
    {
        var direction = new double[gradient.Length];
        if (free.Length == 0)
        {
            return direction;
        }

        var factor = Cholesky.TryFactor(Part(point.Hessian(), free)) ?? Cholesky.TryFactor(Part(point.Expected(), free));
        var downhill = free.Select(f => -gradient[f]).ToArray();
        var step = factor?.Solve(downhill) ?? downhill;

        // A ratio at its bound that the joint step would take below it stays there.
        var blocked = free.Where((f, i) => point.Ratios[f] == 0 && step[i] < 0).ToArray();
        if (blocked.Length > 0)
        {
            return Direction(point, gradient, [.. free.Except(blocked)]);
        }

        for (var i = 0; i < free.Length; i++)
        {
            direction[free[i]] = step[i];
        }

        return direction;
    }

    private static RemlPoint? Along(RemlProblem problem, RemlPoint from, double[] direction)
    {
        const double SmallestShare = 1e-10;

        // The straight way to the first bound: bending there could lead uphill.
        var reach = 1.0;
        for (var f = 0; f < direction.Length; f++)
        {
            reach = direction[f] < 0 ? Math.Min(reach, -from.Ratios[f] / direction[f]) : reach;
        }

        for (var share = reach; share > SmallestShare * reach; share /= 2)
        {
            var ratios = new double[direction.Length];
            for (var f = 0; f < ratios.Length; f++)
            {
                var atBound = direction[f] < 0 && share >= -from.Ratios[f] / direction[f];
                ratios[f] = atBound ? 0 : from.Ratios[f] + (share * direction[f]);
            }

            var next = RemlPoint.At(problem, ratios);
            if (next is not null && next.Criterion <= from.Criterion + CriterionRounding)
            {
                return next;
            }
        }

        return null;
    }

    private static double[][] Part(double[][] matrix, int[] kept) => [.. kept.Select(i => kept.Select(j => matrix[i][j]).ToArray())];
}
