namespace TrialKit.Tests.Numerics.Geodesy;

/// <summary>
/// Distances of a few hundred metres without geodesics: steps along the meridian and the parallel by the radii of curvature of the WGS 84
/// ellipsoid at the middle latitude, which is the mid-latitude formula of Gauss. Off by about 1e-9 of a kilometre's distance.
/// </summary>
internal static class MeridianAndParallel
{
    private const double SemiMajorAxis = 6378137.0;
    private const double Flattening = 1 / 298.257223563;
    private const double EccentricitySquared = Flattening * (2 - Flattening);

    public static double Distance((double Latitude, double Longitude) from, (double Latitude, double Longitude) to)
    {
        var (sin, cos) = Math.SinCos(double.DegreesToRadians((from.Latitude + to.Latitude) / 2));
        var w = 1 - (EccentricitySquared * sin * sin);
        var north = SemiMajorAxis * (1 - EccentricitySquared) / Math.Pow(w, 1.5) * double.DegreesToRadians(to.Latitude - from.Latitude);
        var east = SemiMajorAxis / Math.Sqrt(w) * cos * double.DegreesToRadians(to.Longitude - from.Longitude);
        return Math.Sqrt((north * north) + (east * east));
    }
}
