using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics;
using TrialKit.Numerics.EventTimes;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Emergence;

/// <summary>The table of timing indices, each under its author's name with its source, in days and in heat units.</summary>
/// <remarks>They read a plant as up at the visit that found it, so visits days apart make them late; the event-time estimates are the default.</remarks>
internal static class TimingTable
{
    private const string Page = "docs/methods/timing-indices.md";
    private static readonly int[] Percents = [10, 16, 25, 50, 75, 84, 90];

    /// <summary>The indices of one series of counts over days.</summary>
    /// <param name="days">Visits in days after planting, rising.</param>
    /// <param name="newlyUp">Plants newly up at each.</param>
    /// <param name="sown">Seeds sown, above 0; null when unknown.</param>
    /// <param name="rowMetres">Metres of row watched; null when unknown.</param>
    public static ImmutableArray<TimingIndex> InDays(ReadOnlySpan<double> days, ReadOnlySpan<double> newlyUp, double? sown, double? rowMetres)
    {
        var indices = TimingIndices.Of(days, newlyUp, sown, rowMetres);
        return
        [
            new("final-percent", indices.FinalPercent, Unit.Percent, By("Final emergence", "percent of seeds sown")),
            .. OfTime(indices, days, newlyUp, sown, "", Unit.Days, "d"),
            new("synchrony-primack", indices.Synchrony, Unit.None, By("Synchrony Z", "Primack 1980")),
            new("uncertainty-labouriau", indices.Uncertainty, new("bit"), By("Uncertainty U", "Labouriau & Valadares 1976")),
            new("sum-timson", indices.SumOfCumulativeTimson, Unit.Percent, By("Sum of daily cumulative percent (Timson)", "Timson 1965, Nature 207:216"), indices is { SumOfCumulativeTimson: null, Emerged: > 0 } && sown is not null ? "visits not daily" : null),
        ];
    }

    /// <summary>The indices that have a meaning over heat, their ids begun with <c>heat-</c>.</summary>
    /// <param name="visits">Visits by heat.</param>
    /// <param name="sown">Seeds sown, above 0; null when unknown.</param>
    /// <param name="rowMetres">Metres of row watched; null when unknown.</param>
    /// <param name="units">The degree-days that the visits are in.</param>
    public static ImmutableArray<TimingIndex> InHeat(HeatVisits visits, double? sown, double? rowMetres, UnitSystem units)
    {
        var unit = units == UnitSystem.Us ? Unit.FahrenheitDays : Unit.CelsiusDays;
        return OfTime(TimingIndices.Of(visits.Heat, visits.NewlyUp, sown, rowMetres), visits.Heat, visits.NewlyUp, sown, "heat-", unit, unit.Symbol.TrimEnd('s'));
    }

    private static ImmutableArray<TimingIndex> OfTime(TimingIndices indices, ReadOnlySpan<double> times, ReadOnlySpan<double> newlyUp, double? sown, string prefix, Unit unit, string per)
    {
        var curve = StepCurve.FromCumulative(times, Cumulative(newlyUp), sown: null);
        var (up, target) = (indices.Emerged, sown);
        return
        [
            new(prefix + "mean-time", indices.MeanTime, unit, By(prefix, "Mean emergence time", "Ellis & Roberts 1981")),
            new(prefix + "variance-of-time", indices.VarianceOfTime, new(unit == Unit.Days ? "d²" : $"({unit})²"), By(prefix, "Variance of emergence time, n - 1", "Labouriau 1983")),
            new(prefix + "cv-of-time", indices.CoefficientOfVariationOfTime, Unit.Percent, By(prefix, "Coefficient of variation of emergence time", "Ranal & Santana 2006, Rev. Bras. Bot. 29:1-11")),
            new(prefix + "velocity-kotowski", indices.CoefficientOfVelocity, new($"%/{per}"), By(prefix, "Coefficient of velocity", "Kotowski 1926, Proc. Am. Soc. Hort. Sci. 23:176-184")),
            new(prefix + "speed-maguire", indices.SpeedMaguire, new($"plants/{per}"), By(prefix, "Speed of emergence (Maguire)", "Maguire 1962, Crop Sci. 2:176-177")),
            new(prefix + "rate-index-erbach", indices.EmergenceRateIndexErbach, new($"%/{per}"), By(prefix, "Emergence rate index (Erbach)", "Erbach 1982, Trans. ASAE 25:906-911")),
            new(prefix + "rate-index-bilbro-wanjura", indices.EmergenceRateIndexBilbroWanjura, new($"plants/(m {per})"), By(prefix, "Emergence rate index (Bilbro-Wanjura)", "Bilbro & Wanjura 1982, Trans. ASAE 25:1484-1487")),
            Reached(prefix + "median-coolbear", indices.MedianCoolbear, unit, By(prefix, "Median time, target (N + 1)/2", "Coolbear et al. 1984, J. Exp. Bot. 35:1609-1617")),
            Reached(prefix + "median-farooq", indices.MedianFarooq, unit, By(prefix, "Median time, target N/2", "Farooq et al. 2005, J. Integr. Plant Biol. 47:187-193")),
            .. Interpolated(curve, up, prefix, "up", "plants up", unit),
            .. target is { } seeds ? Interpolated(curve, seeds, prefix, "sown", "seeds sown", unit) : [],
        ];
    }

    private static IEnumerable<TimingIndex> Interpolated(StepCurve curve, double of, string prefix, string suffix, string whole, Unit unit)
    {
        if (curve.Base == 0)
        {
            yield break;
        }

        var cumulative = curve.Up.ToArray();
        var times = Percents.ToDictionary(percent => percent, percent => Interpolation.TimeToCount(curve.Times, cumulative, percent / 100.0 * of));
        foreach (var percent in Percents)
        {
            yield return Reached(Text($"{prefix}t{percent}-of-{suffix}"), times[percent], unit, By(prefix, Text($"Time to {percent} % of {whole}, straight between visits"), "linear interpolation"));
        }

        yield return new(Text($"{prefix}t90-t10-of-{suffix}"), times[90].Time - times[10].Time, unit, By(prefix, $"T90 - T10 of {whole}, straight between visits", "Egli & Rucker 2012, Crop Sci. 52:2774-2782"));
    }

    private static TimingIndex Reached(string id, TimeToCount time, Unit unit, Method method) => new(id, time.Time, unit, method, time switch
    {
        { Time: not null } => null,
        { Reached: CountReached.OnOrBeforeFirst } => "on or before the first visit",
        _ => "not reached",
    });

    private static double[] Cumulative(ReadOnlySpan<double> newlyUp)
    {
        var up = newlyUp.ToArray();
        for (var i = 1; i < up.Length; i++)
        {
            up[i] += up[i - 1];
        }

        return up;
    }

    private static Method By(string prefix, string name, string source) => By(prefix.Length == 0 ? name : $"{name}, in heat", source);

    private static Method By(string name, string source) => new(name, source, Page);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
