using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Screening;

/// <summary>Grubbs' test for one outlier on either side (Grubbs 1969, Technometrics 11:1).</summary>
internal static class Grubbs
{
    /// <summary>The test.</summary>
    /// <param name="values">3 values or more, not all equal.</param>
    public static GrubbsResult Test(ReadOnlySpan<double> values)
    {
        Checks.Sample(values, 3);
        var mean = Summary.Mean(values);
        var deviation = Summary.StandardDeviation(values);
        if (deviation <= Ties.Relative * Math.Abs(mean))
        {
            throw new ArgumentException(
                FormattableString.Invariant($"All {values.Length} values equal {mean}; values that vary were expected."), nameof(values));
        }

        var furthest = 0;
        for (var i = 1; i < values.Length; i++)
        {
            if (Math.Abs(values[i] - mean) > Math.Abs(values[furthest] - mean))
            {
                furthest = i;
            }
        }

        var n = values.Length;
        var g = Math.Abs(values[furthest] - mean) / deviation;

        // G cannot exceed (n - 1) / sqrt(n); there t is infinite and p zero.
        var room = ((n - 1.0) * (n - 1) / n) - (g * g);
        var t = room > 0 ? g * Math.Sqrt((n - 2) / room) : double.PositiveInfinity;
        return new GrubbsResult(g, furthest, Math.Min(1, 2 * n * StudentT.UpperTail(t, n - 2)));
    }

    /// <summary>The G exceeded with chance <paramref name="alpha"/> at most on either side; a one-sided test takes twice its level.</summary>
    /// <param name="n">Values, 3 or more.</param>
    /// <param name="alpha">Two-sided level, between 0 and 1.</param>
    public static double CriticalValue(int n, double alpha)
    {
        Checks.AtLeast(n, 3);
        Checks.OpenProbability(alpha);
        var t = StudentT.UpperQuantile(alpha / (2 * n), n - 2);
        return (n - 1) / Math.Sqrt(n) / Math.Sqrt(1 + ((n - 2) / (t * t)));
    }
}
