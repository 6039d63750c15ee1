namespace TrialKit.Numerics;

/// <summary>When two numbers that came out of subtractions count as equal.</summary>
internal static class Ties
{
    /// <summary>
    /// Relative. Differences of measured values carry rounding of about 1e-16 of the values, which may be a thousand times
    /// the difference itself; no field measurement is read to ten digits.
    /// </summary>
    public const double Relative = 1e-10;
}
