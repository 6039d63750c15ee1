namespace TrialKit.Numerics.Distributions;

/// <summary>Tails of the binomial distribution as exact sums of its terms, smallest terms included.</summary>
internal static class Binomial
{
    /// <summary>P(X = k) for n trials with chance p.</summary>
    public static double Term(int k, int n, double p)
    {
        Checks.AtLeast(n, 1);
        Checks.Probability(p);
        if (k < 0 || k > n)
        {
            return 0;
        }

        if (k == 0 || k == n)
        {
            return k == 0 ? Math.Pow(1 - p, n) : Math.Pow(p, n);
        }

        // C(n, k) p^k q^(n-k) = p^k q^(n-k) / B(k, n-k) times n / (k (n-k)).
        return Saddle.BetaPower(k, n - k, p, 1 - p) * n / ((double)k * (n - k));
    }

    /// <summary>P(X &lt;= k).</summary>
    public static double LowerTail(int k, int n, double p) => Sum(0, k, n, p);

    /// <summary>P(X &gt;= k): the value itself belongs to the tail.</summary>
    public static double UpperTail(int k, int n, double p) => Sum(k, n, n, p);

    private static double Sum(int from, int to, int n, double p)
    {
        Checks.AtLeast(n, 1);
        Checks.Probability(p);
        var sum = 0.0;
        for (var k = Math.Max(0, from); k <= Math.Min(n, to); k++)
        {
            sum += Term(k, n, p);
        }

        return Math.Min(1, sum);
    }
}
