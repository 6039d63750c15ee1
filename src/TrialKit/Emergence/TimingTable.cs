using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Results;

namespace TrialKit.Emergence;

/// <summary>The table of timing indices, each under its author's name with its source.</summary>
/// <remarks>They read a plant as up at the visit that found it, so visits days apart make them late; the event-time estimates are the default.</remarks>
internal static class TimingTable
{
    private const string Page = "docs/methods/timing-indices.md";
    private static readonly Unit PerDay = new("plants/d");
    private static readonly Unit PercentPerDay = new("%/d");
    private static readonly Unit DaysSquared = new("d2");

    /// <summary>The indices of one series of counts.</summary>
    /// <param name="days">Visits in days after planting, rising.</param>
    /// <param name="newlyUp">Plants newly up at each.</param>
    /// <param name="sown">Seeds sown, above 0; null when unknown.</param>
    /// <param name="rowMetres">Metres of row watched; null when unknown.</param>
    public static ImmutableArray<TimingIndex> Of(ReadOnlySpan<double> days, ReadOnlySpan<double> newlyUp, double? sown, double? rowMetres)
    {
        var indices = TimingIndices.Of(days, newlyUp, sown, rowMetres);
        return
        [
            new("mean-time", indices.MeanTime, Unit.Days, By("Mean emergence time", "Ellis & Roberts 1981")),
            new("variance-of-time", indices.VarianceOfTime, DaysSquared, By("Variance of emergence time, n - 1", "Labouriau 1983")),
            new("cv-of-time", indices.CoefficientOfVariationOfTime, Unit.Percent, By("Coefficient of variation of emergence time", "Ranal & Santana 2006, Rev. Bras. Bot. 29:1-11")),
            new("velocity-kotowski", indices.CoefficientOfVelocity, PercentPerDay, By("Coefficient of velocity", "Kotowski 1926, Proc. Am. Soc. Hort. Sci. 23:176-184")),
            new("speed-maguire", indices.SpeedMaguire, PerDay, By("Speed of emergence (Maguire)", "Maguire 1962, Crop Sci. 2:176-177")),
            new("rate-index-erbach", indices.EmergenceRateIndexErbach, PercentPerDay, By("Emergence rate index (Erbach)", "Erbach 1982, Trans. ASAE 25:906-911")),
            new("rate-index-bilbro-wanjura", indices.EmergenceRateIndexBilbroWanjura, new("plants/(m d)"), By("Emergence rate index (Bilbro-Wanjura)", "Bilbro & Wanjura 1982, Trans. ASAE 25:1484-1487")),
            new("synchrony-primack", indices.Synchrony, Unit.None, By("Synchrony Z", "Primack 1980")),
            new("uncertainty-labouriau", indices.Uncertainty, new("bit"), By("Uncertainty U", "Labouriau & Valadares 1976")),
            new("sum-timson", indices.SumOfCumulativeTimson, Unit.Percent, By("Sum of daily cumulative percent (Timson)", "Timson 1965, Nature 207:216")),
            new("median-coolbear", indices.MedianCoolbear.Time, Unit.Days, By("Median time, target (N + 1)/2", "Coolbear et al. 1984, J. Exp. Bot. 35:1609-1617")),
            new("median-farooq", indices.MedianFarooq.Time, Unit.Days, By("Median time, target N/2", "Farooq et al. 2005, J. Integr. Plant Biol. 47:187-193")),
        ];
    }

    private static Method By(string name, string source) => new(name, source, Page);
}
