using TrialKit.Numerics.EventTimes;

namespace TrialKit.Numerics;

/// <summary>Indices of germination and emergence timing from counts of plants newly up at visits, each under its author's name.</summary>
/// <remarks>
/// n_i plants newly up at t_i, G their sum, S seeds sown. An index that its counts leave undefined is null.
/// Comparable only between series with the same visits; the formulas and sources stand at each member.
/// </remarks>
internal sealed record TimingIndices
{
    private TimingIndices()
    {
    }

    /// <summary>G: plants up in all.</summary>
    public required double Emerged { get; init; }

    /// <summary>Final emergence 100 G / S, per cent of sown.</summary>
    public double? FinalPercent { get; private init; }

    /// <summary>Mean emergence time, sum(n t) / G (Ellis and Roberts 1981).</summary>
    public double? MeanTime { get; private init; }

    /// <summary>Variance of time, sum n (t - mean)^2 / (G - 1) (Labouriau 1983).</summary>
    public double? VarianceOfTime { get; private init; }

    /// <summary>Square root of the variance of time.</summary>
    public double? StandardDeviationOfTime => VarianceOfTime is { } v ? Math.Sqrt(v) : null;

    /// <summary>100 SD / mean time, per cent (Ranal and Santana 2006, Rev. Bras. Bot. 29:1-11).</summary>
    public double? CoefficientOfVariationOfTime => 100.0 * StandardDeviationOfTime / MeanTime;

    /// <summary>Coefficient of velocity, 100 G / sum(n t) (Kotowski 1926, Proc. Am. Soc. Hort. Sci. 23:176-184).</summary>
    public double? CoefficientOfVelocity { get; private init; }

    /// <summary>Speed of emergence, sum of new plants over time, plants per unit time (Maguire 1962, Crop Sci. 2:176-177).</summary>
    public double? SpeedMaguire { get; private init; }

    /// <summary>Emergence rate index, sum of new per cent of seeds sown over time (Erbach 1982, Trans. ASAE 25:906-911).</summary>
    public double? EmergenceRateIndexErbach { get; private init; }

    /// <summary>Emergence rate index, plants per unit length of row over mean time (Bilbro and Wanjura 1982, Trans. ASAE 25:1484-1487).</summary>
    public double? EmergenceRateIndexBilbroWanjura { get; private init; }

    /// <summary>Synchrony Z, sum n(n - 1) / (G (G - 1)) (Primack 1980).</summary>
    public double? Synchrony { get; private init; }

    /// <summary>Uncertainty U, -sum f log2 f with f = n / G, bits (Labouriau and Valadares 1976).</summary>
    public double? Uncertainty { get; private init; }

    /// <summary>Sum of the daily cumulative per cent of sown (Timson 1965, Nature 207:216); null unless the visits are one unit of time apart.</summary>
    public double? SumOfCumulativeTimson { get; private init; }

    /// <summary>Median time with the target (G + 1) / 2 (Coolbear et al. 1984, J. Exp. Bot. 35:1609-1617).</summary>
    public TimeToCount MedianCoolbear { get; private init; }

    /// <summary>Median time with the target G / 2 (Farooq et al. 2005, J. Integr. Plant Biol. 47:187-193).</summary>
    public TimeToCount MedianFarooq { get; private init; }

    /// <summary>Computes every index.</summary>
    /// <param name="times">Times of the visits since planting, 0 or later, rising.</param>
    /// <param name="newlyUp">Plants newly up at each visit, 0 or more.</param>
    /// <param name="sown">Seeds sown, null when unknown.</param>
    /// <param name="rowLength">Length of row watched, null when unknown.</param>
    /// <exception cref="ArgumentException">Lengths differ, or a time, a count, the seeds or the length is impossible.</exception>
    public static TimingIndices Of(ReadOnlySpan<double> times, ReadOnlySpan<double> newlyUp, double? sown, double? rowLength)
    {
        VisitTimes.Check(times, newlyUp);
        VisitTimes.CheckSown(sown);
        if (rowLength is { } row && (!(row > 0.0) || double.IsPositiveInfinity(row)))
        {
            throw new ArgumentOutOfRangeException(nameof(rowLength), row, "Found a row length that is not finite and above 0; expected a length, or null when unknown.");
        }

        double g = 0, sumOfTimes = 0, speed = 0, pairs = 0, timson = 0;
        var daily = true;
        var cumulative = new double[times.Length];
        for (var i = 0; i < times.Length; i++)
        {
            var n = newlyUp[i];
            g += n;
            sumOfTimes += n * times[i];
            speed += n == 0.0 ? 0.0 : n / times[i];
            pairs += n * (n - 1.0);
            timson += g;
            cumulative[i] = g;
            daily &= i == 0 || Math.Abs(times[i] - times[i - 1] - 1.0) < 1e-9;
        }

        if (g == 0.0)
        {
            return new TimingIndices { Emerged = 0.0, FinalPercent = sown is null ? null : 0.0 };
        }

        var mean = sumOfTimes / g;
        double squares = 0, bits = 0;
        for (var i = 0; i < times.Length; i++)
        {
            squares += newlyUp[i] * (times[i] - mean) * (times[i] - mean);
            bits -= newlyUp[i] == 0.0 ? 0.0 : newlyUp[i] / g * Math.Log2(newlyUp[i] / g);
        }

        // A plant up at time 0 makes every rate infinite.
        double? rate = double.IsFinite(speed) ? speed : null;
        return new TimingIndices
        {
            Emerged = g,
            FinalPercent = 100.0 * g / sown,
            MeanTime = mean,
            VarianceOfTime = g > 1.0 ? squares / (g - 1.0) : null,
            CoefficientOfVelocity = mean > 0.0 ? 100.0 / mean : null,
            SpeedMaguire = rate,
            EmergenceRateIndexErbach = 100.0 * rate / sown,
            EmergenceRateIndexBilbroWanjura = mean > 0.0 ? g / rowLength / mean : null,
            Synchrony = g > 1.0 ? pairs / (g * (g - 1.0)) : null,
            Uncertainty = bits,
            SumOfCumulativeTimson = daily ? 100.0 * timson / sown : null,
            MedianCoolbear = Interpolation.TimeToCount(times, cumulative, 0.5 * (g + 1.0)),
            MedianFarooq = Interpolation.TimeToCount(times, cumulative, 0.5 * g),
        };
    }
}
