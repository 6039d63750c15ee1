using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Pairs;

/// <summary>The sign test: plus signs among the pairs that differ, against the binomial with chance one half.</summary>
internal static class SignTest
{
    /// <summary>The exact test; with no pair that differs, every p is 1.</summary>
    /// <param name="differences">One difference per pair, 1 or more.</param>
    public static SignTestResult Exact(ReadOnlySpan<double> differences)
    {
        Checks.Sample(differences, 1);
        var largest = 0.0;
        foreach (var difference in differences)
        {
            largest = Math.Max(largest, Math.Abs(difference));
        }

        int plus = 0, minus = 0;
        foreach (var difference in differences)
        {
            if (Math.Abs(difference) > Ties.Relative * largest)
            {
                _ = difference > 0 ? plus++ : minus++;
            }
        }

        var used = plus + minus;
        var less = used == 0 ? 1 : Binomial.LowerTail(plus, used, 0.5);
        var greater = used == 0 ? 1 : Binomial.UpperTail(plus, used, 0.5);
        return new SignTestResult(
            plus, minus, differences.Length - used, Math.Min(1, 2 * Math.Min(less, greater)), greater, less);
    }
}
