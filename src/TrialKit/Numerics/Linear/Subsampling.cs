namespace TrialKit.Numerics.Linear;

/// <summary>Strips with several spots in each: treatments are tested against strips, spots only measure the strips.</summary>
/// <param name="Strips">The analysis of strip means, each strip counting once.</param>
/// <param name="SpotsPerStrip">Harmonic mean of the spots in a strip.</param>
/// <param name="SpotSumOfSquares">Between spots within strips.</param>
/// <param name="SpotDegreesOfFreedom">Spots less strips.</param>
/// <param name="HasEqualSpots">Whether each strip has as many spots as the others.</param>
/// <remarks>
/// Snedecor and Cochran 1967, sections 10.16 and 17.8. With unequal spots strip means are taken alike (Yates 1934,
/// unweighted means) and the harmonic mean stands for the number of spots.
/// </remarks>
internal sealed record Subsampling(
    BlockAnova Strips, double SpotsPerStrip, double SpotSumOfSquares, int SpotDegreesOfFreedom, bool HasEqualSpots)
{
    /// <summary>Variance between spots of a strip; null when no strip has two spots.</summary>
    public double? SpotVariance => SpotDegreesOfFreedom > 0 ? SpotSumOfSquares / SpotDegreesOfFreedom : null;

    /// <summary>Error mean square between strips on the scale of a spot: k times that of strip means.</summary>
    public double? StripMeanSquare => SpotsPerStrip * Strips.ErrorMeanSquare;

    /// <summary>Treatment mean square on the scale of a spot.</summary>
    public double? TreatmentMeanSquare => SpotsPerStrip * Strips.Treatments.MeanSquare;

    /// <summary>(MS strip - MS spot)/k before it is kept from below 0; null without either mean square.</summary>
    public double? RawStripVariance => (StripMeanSquare - SpotVariance) / SpotsPerStrip;

    /// <summary>Variance between strips beyond that of their spots, 0 when its estimate is negative.</summary>
    public double? StripVariance => RawStripVariance is { } raw ? Math.Max(0, raw) : null;

    /// <summary>Whether the estimate of the strip variance was negative: strips differ no more than their spots make them.</summary>
    public bool StripVarianceWasNegative => RawStripVariance < 0;

    /// <summary>F as it comes out when each spot is taken for a replicate: the wrong test, for teaching. Null with unequal spots.</summary>
    public double? FOverSpots
    {
        get
        {
            var error = (SpotsPerStrip * Strips.Error.SumOfSquares) + SpotSumOfSquares;
            return HasEqualSpots && error > 0 ? TreatmentMeanSquare / (error / DegreesOverSpots) : null;
        }
    }

    /// <summary>Error degrees of freedom that the wrong test claims.</summary>
    public int DegreesOverSpots => Strips.Error.DegreesOfFreedom + SpotDegreesOfFreedom;

    /// <summary>Analyses spots.</summary>
    /// <param name="responses">One finite value per spot.</param>
    /// <param name="strip">Strip of each spot, 0..s-1 without gaps.</param>
    /// <param name="block">Block of each strip.</param>
    /// <param name="treatment">Treatment of each strip.</param>
    /// <returns>The analysis.</returns>
    /// <exception cref="ArgumentException">A value is not finite, lengths differ, or the strips are no design in blocks.</exception>
    public static Subsampling Of(
        ReadOnlySpan<double> responses, ReadOnlySpan<int> strip, ReadOnlySpan<int> block, ReadOnlySpan<int> treatment)
    {
        Checks.Sample(responses, 1);
        var strips = LevelChecks.Count(strip, responses.Length, nameof(strip));
        var shifted = StableSums.Shifted(responses, out var shift);
        var means = StableSums.LevelMeans(shifted, strip, strips);
        var counts = new int[strips];
        var within = new double[shifted.Length];
        for (var i = 0; i < shifted.Length; i++)
        {
            counts[strip[i]]++;
            within[i] = shifted[i] - means[strip[i]];
        }

        return new Subsampling(
            BlockAnova.Of([.. means.Select(mean => shift + mean)], block, treatment),
            strips / counts.Sum(count => 1.0 / count),
            StableSums.SumOfSquares(within),
            responses.Length - strips,
            Array.TrueForAll(counts, count => count == counts[0]));
    }
}
