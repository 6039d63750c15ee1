namespace TrialKit.Numerics.Geodesy;

/// <summary>Geodesics on the WGS 84 ellipsoid.</summary>
/// <remarks>
/// Vincenty 1975, Direct and inverse solutions of geodesics on the ellipsoid with application of nested equations,
/// Survey Review 23(176):88-93. Good to about half a millimetre at any distance, to far less along a field.
/// </remarks>
internal static class Geodesic
{
    private const double SemiMajorAxis = 6378137.0;
    private const double Flattening = 1 / 298.257223563;
    private const double SemiMinorAxis = SemiMajorAxis * (1 - Flattening);
    private const double Settled = 1e-15;
    private const int MostSteps = 100;

    /// <summary>The place at which a geodesic arrives.</summary>
    /// <param name="latitude">Degrees north of the start, from -90 to 90.</param>
    /// <param name="longitude">Degrees east of the start.</param>
    /// <param name="azimuth">Direction at the start, degrees from north over east.</param>
    /// <param name="distance">Metres, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, infinite or NaN.</exception>
    public static GeodesicPoint Direct(double latitude, double longitude, double azimuth, double distance)
    {
        if (!(Math.Abs(latitude) <= 90))
        {
            throw new ArgumentOutOfRangeException(nameof(latitude), FormattableString.Invariant($"{latitude} was found; a latitude from -90 to 90 degrees was expected."));
        }

        Checks.Finite(longitude);
        Checks.Finite(azimuth);
        Checks.Finite(distance);
        ArgumentOutOfRangeException.ThrowIfNegative(distance);
        var (sinAzimuth, cosAzimuth) = Math.SinCos(double.DegreesToRadians(azimuth));
        var reduced = Math.Atan((1 - Flattening) * Math.Tan(double.DegreesToRadians(latitude)));
        var (sinReduced, cosReduced) = Math.SinCos(reduced);
        var sinEquator = cosReduced * sinAzimuth;
        var cosSquared = 1 - (sinEquator * sinEquator);
        var fromEquator = Math.Atan2(Math.Tan(reduced), cosAzimuth);
        var (a, b) = Series(cosSquared);
        var arc = Arc(distance / (SemiMinorAxis * a), b, fromEquator, out var cosMiddle);
        var (sinArc, cosArc) = Math.SinCos(arc);

        var south = (sinReduced * sinArc) - (cosReduced * cosArc * cosAzimuth);
        var arrived = Math.Atan2(
            (sinReduced * cosArc) + (cosReduced * sinArc * cosAzimuth),
            (1 - Flattening) * Math.Sqrt((sinEquator * sinEquator) + (south * south)));
        var onSphere = Math.Atan2(sinArc * sinAzimuth, (cosReduced * cosArc) - (sinReduced * sinArc * cosAzimuth));
        var c = Flattening / 16 * cosSquared * (4 + (Flattening * (4 - (3 * cosSquared))));
        var along = onSphere - ((1 - c) * Flattening * sinEquator
            * (arc + (c * sinArc * (cosMiddle + (c * cosArc * ((2 * cosMiddle * cosMiddle) - 1))))));
        return new(
            double.RadiansToDegrees(arrived),
            Math.IEEERemainder(longitude + double.RadiansToDegrees(along), 360),
            (double.RadiansToDegrees(Math.Atan2(sinEquator, -south)) + 360) % 360);
    }

    // Vincenty's A and B, in nested form.
    private static (double A, double B) Series(double cosSquared)
    {
        var u = cosSquared * ((SemiMajorAxis * SemiMajorAxis) - (SemiMinorAxis * SemiMinorAxis)) / (SemiMinorAxis * SemiMinorAxis);
        return (
            1 + (u / 16384 * (4096 + (u * (-768 + (u * (320 - (175 * u))))))),
            u / 1024 * (256 + (u * (-128 + (u * (74 - (47 * u)))))));
    }

    // The arc on the auxiliary sphere, found step by step; each step gains about three digits.
    private static double Arc(double first, double b, double fromEquator, out double cosMiddle)
    {
        var arc = first;
        for (var step = 0; ; step++)
        {
            cosMiddle = Math.Cos((2 * fromEquator) + arc);
            var (sin, cos) = Math.SinCos(arc);
            var twice = (2 * cosMiddle * cosMiddle) - 1;
            var correction = b * sin * (cosMiddle + (b / 4 * ((cos * twice)
                - (b / 6 * cosMiddle * ((4 * sin * sin) - 3) * ((4 * cosMiddle * cosMiddle) - 3)))));
            var next = first + correction;
            if (Math.Abs(next - arc) <= Settled * Math.Max(1, Math.Abs(next)) || step == MostSteps)
            {
                return next;
            }

            arc = next;
        }
    }
}
