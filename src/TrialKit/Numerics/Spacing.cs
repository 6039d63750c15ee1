using System.Globalization;

namespace TrialKit.Numerics;

/// <summary>Classes of in-row spacings x by their ratio to the reference spacing: I up to 0.5, II up to 1.5, III up to 2.5, IV up to 3.5, V above.</summary>
/// <remarks>ISO 7256-1:1984 as described by Kachman and Smith 1995, Trans. ASAE 38:379-387.</remarks>
internal sealed class Spacing
{
    private readonly int[] counts;

    private Spacing(double reference, int[] counts, double mean, double? deviation, double? precision)
    {
        Reference = reference;
        this.counts = counts;
        Mean = mean;
        StandardDeviation = deviation;
        Precision = precision;
        foreach (var n in counts)
        {
            Spacings += n;
        }
    }

    /// <summary>How far a ratio may pass a class limit and still count as on it: readings are rounded.</summary>
    public const double LimitTolerance = 1e-6;

    /// <summary>Largest precision, per cent, that spacings can have when they are uniform within class II: 100 / sqrt(12).</summary>
    public static double PrecisionCeiling => 100.0 / Math.Sqrt(12.0);

    /// <summary>The reference spacing: that of the seeds dropped.</summary>
    public double Reference { get; }

    /// <summary>Spacings in all.</summary>
    public int Spacings { get; }

    /// <summary>Counts of classes I to V.</summary>
    public ReadOnlySpan<int> Counts => counts;

    /// <summary>Mean spacing.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation (n - 1); null for one spacing.</summary>
    public double? StandardDeviation { get; }

    /// <summary>100 SD / mean; null for one spacing, or where all are 0.</summary>
    public double? CoefficientOfVariation => Mean > 0.0 ? 100.0 * StandardDeviation / Mean : null;

    /// <summary>100 SD (n - 1) of the spacings in class II over the reference, per cent; null with fewer than two there. Lower is better.</summary>
    public double? Precision { get; }

    /// <summary>Shares of the spacings.</summary>
    public SpacingShares OfSpacings => new((double)counts[0] / Spacings, (double)counts[1] / Spacings, (double)(counts[2] + counts[3] + counts[4]) / Spacings);

    /// <summary>Seeds the spacings ought to hold, n2 + 2 n3 + 3 n4 + 4 n5.</summary>
    public int IsoIntervals => counts[1] + (2 * counts[2]) + (3 * counts[3]) + (4 * counts[4]);

    /// <summary>Shares of the theoretical intervals; null if there are none.</summary>
    /// <remarks>The convention of ISO 7256-1, as remembered: D = n1 / N', A = (N - 2 n1) / N' (null if negative), M = (n3 + 2 n4 + 3 n5) / N'.</remarks>
    public SpacingShares? OfIsoIntervals
    {
        get
        {
            if (IsoIntervals == 0)
            {
                return null;
            }

            double n = IsoIntervals;
            var single = Spacings - (2 * counts[0]);
            return new SpacingShares(counts[0] / n, single < 0 ? null : single / n, (counts[2] + (2 * counts[3]) + (3 * counts[4])) / n);
        }
    }

    /// <summary>Classes spacings.</summary>
    /// <param name="spacings">Distances between neighbours, finite, 0 or more, at least one.</param>
    /// <param name="reference">Theoretical spacing, above 0, in the same unit.</param>
    /// <exception cref="ArgumentException">Nothing was given, or a spacing or the reference is impossible.</exception>
    public static Spacing Of(ReadOnlySpan<double> spacings, double reference)
    {
        CheckReference(reference);
        if (spacings.Length == 0)
        {
            throw new ArgumentException("Found no spacing; expected at least one.", nameof(spacings));
        }

        var perClass = new int[5];
        var good = new List<double>(spacings.Length);
        for (var i = 0; i < spacings.Length; i++)
        {
            if (!(spacings[i] >= 0.0) || double.IsPositiveInfinity(spacings[i]))
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found the spacing {spacings[i]} at position {i + 1}; expected a finite distance of 0 or more."), nameof(spacings));
            }

            var at = ClassOf(spacings[i] / reference);
            perClass[at - 1]++;
            if (at == 2)
            {
                good.Add(spacings[i]);
            }
        }

        var (mean, deviation) = Moments(spacings);
        var (_, ofGood) = good.Count == 0 ? (0.0, null) : Moments([.. good]);
        return new Spacing(reference, perClass, mean, deviation, 100.0 * ofGood / reference);
    }

    /// <summary>The class, 1 to 5, of a ratio to the reference; a ratio on a limit belongs below it.</summary>
    public static int ClassOf(double ratio)
    {
        if (!(ratio >= 0.0))
        {
            throw new ArgumentOutOfRangeException(nameof(ratio), ratio, "Found a ratio below 0; expected 0 or more.");
        }

        for (var limit = 0; limit < 4; limit++)
        {
            if (ratio <= limit + 0.5 + LimitTolerance)
            {
                return limit + 1;
            }
        }

        return 5;
    }

    /// <summary>Standard deviation of spacings when every seed drops perfectly and each survives with probability g: x_ref sqrt(1 - g) / g.</summary>
    /// <param name="reference">Theoretical spacing, above 0.</param>
    /// <param name="survival">g, in (0, 1].</param>
    public static double FloorOfDeviation(double reference, double survival)
    {
        CheckReference(reference);
        if (!(survival is > 0.0 and <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(survival), survival, "Found a survival outside (0, 1].");
        }

        return reference * Math.Sqrt(1.0 - survival) / survival;
    }

    private static void CheckReference(double reference)
    {
        if (!(reference > 0.0) || double.IsPositiveInfinity(reference))
        {
            throw new ArgumentOutOfRangeException(nameof(reference), reference, "Found a reference spacing that is not finite and above 0.");
        }
    }

    private static (double Mean, double? Deviation) Moments(ReadOnlySpan<double> x)
    {
        var sum = 0.0;
        foreach (var value in x)
        {
            sum += value;
        }

        var mean = sum / x.Length;
        var squares = 0.0;
        foreach (var value in x)
        {
            squares += (value - mean) * (value - mean);
        }

        return (mean, x.Length > 1 ? Math.Sqrt(squares / (x.Length - 1)) : null);
    }
}

/// <summary>How spacings divide, as fractions.</summary>
/// <param name="Multiples">Two or more seeds where one should be.</param>
/// <param name="QualityOfFeed">One seed where one should be; null where the formula turns negative.</param>
/// <param name="Misses">No seed where one should be.</param>
internal readonly record struct SpacingShares(double Multiples, double? QualityOfFeed, double Misses);
