namespace TrialKit.Numerics.Pairs;

/// <summary>The Hodges-Lehmann estimate and its interval.</summary>
/// <param name="Estimate">Median of the Walsh averages.</param>
/// <param name="Lower">Lower end of the interval.</param>
/// <param name="Upper">Upper end of the interval.</param>
/// <param name="AchievedLevel">
/// Level the interval truly has: the smallest reachable one not below that asked, or, where no interval reaches that, the
/// level of the widest.
/// </param>
/// <param name="OrderStatistic">The interval runs from this Walsh average, counted from the smallest, to its mirror image.</param>
/// <param name="WalshAverages">How many Walsh averages there are, n (n + 1) / 2.</param>
internal readonly record struct HodgesLehmannResult(
    double Estimate, double Lower, double Upper, double AchievedLevel, int OrderStatistic, int WalshAverages);
