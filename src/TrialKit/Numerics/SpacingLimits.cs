namespace TrialKit.Numerics;

/// <summary>What the evenness of in-row spacing can come to at its best and at its worst.</summary>
internal static class SpacingLimits
{
    /// <summary>Largest precision, per cent of the reference, of spacings that lie anywhere from half to one and a half references with equal chance: 100 / sqrt(12).</summary>
    public static double PrecisionCeiling => 100.0 / Math.Sqrt(12.0);

    /// <summary>Standard deviation of spacings when every seed drops in its place and each survives with probability g: reference sqrt(1 - g) / g.</summary>
    /// <remarks>A spacing is then a geometric number of references.</remarks>
    /// <param name="reference">Spacing of the seeds, above 0.</param>
    /// <param name="survival">g, in (0, 1].</param>
    public static double FloorOfDeviation(double reference, double survival)
    {
        Checks.Positive(reference);
        if (!(survival is > 0.0 and <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(survival), survival, "Found a survival outside (0, 1].");
        }

        return reference * Math.Sqrt(1.0 - survival) / survival;
    }
}
