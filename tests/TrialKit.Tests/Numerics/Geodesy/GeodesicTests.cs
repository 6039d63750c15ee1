using TrialKit.Numerics.Geodesy;

namespace TrialKit.Tests.Numerics.Geodesy;

public class GeodesicTests
{
    [Theory]

    // Karney 2013, Algorithms for geodesics, J. Geod. 87:43-55, table 2. Value from memory.
    [InlineData("ten thousand kilometres", 40, 0, 30, 10_000_000, 41.79331020506, 137.84490004377, 149.09016931807)]

    // Flinders Peak to Buninyong, the worked example of the Geocentric Datum of Australia technical manual (on GRS 80, whose
    // flattening differs by less than 2e-11: nothing at this length). Value from memory.
    [InlineData("Flinders Peak to Buninyong", -37.951033416667, 144.424867888889, 306.868158333333, 54972.271, -37.652821138889, 143.926495527778, 307.173630555556)]
    public void Direct_PublishedLine_Arrives(string name, double latitude, double longitude, double azimuth, double distance, double atLatitude, double atLongitude, double atAzimuth)
    {
        var arrived = Geodesic.Direct(latitude, longitude, azimuth, distance);

        Close.Absolute(atLatitude, arrived.Latitude, Tolerances.GeodesicDegrees, name);
        Close.Absolute(atLongitude, arrived.Longitude, Tolerances.GeodesicDegrees, name);
        Close.Absolute(atAzimuth, arrived.Azimuth, Tolerances.GeodesicAzimuth, name);
    }

    [Theory]
    [InlineData("along the equator", 0, 90, 0, 1)]
    [InlineData("against the equator", 0, 270, 0, -1)]
    public void Direct_AlongTheEquator_IsAnArcOfACircle(string name, double latitude, double azimuth, double atLatitude, double sign)
    {
        var arrived = Geodesic.Direct(latitude, 0, azimuth, 6378137.0 * Math.PI / 180);

        Close.Absolute(atLatitude, arrived.Latitude, Tolerances.ClosedForm, name);
        Close.Absolute(sign, arrived.Longitude, Tolerances.ClosedForm, name);
    }

    [Theory]
    [InlineData(double.NaN, 0, 0, 0)]
    [InlineData(91, 0, 0, 0)]
    [InlineData(0, double.NaN, 0, 0)]
    [InlineData(0, 0, double.PositiveInfinity, 0)]
    [InlineData(0, 0, 0, -1)]
    [InlineData(0, 0, 0, double.NaN)]
    public void Direct_ImpossibleValue_IsRefused(double latitude, double longitude, double azimuth, double distance) =>
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Geodesic.Direct(latitude, longitude, azimuth, distance));

    [Theory]
    [InlineData(0)]
    [InlineData(41.5)]
    [InlineData(-63)]
    public void Direct_ShortLines_HaveTheLengthOfTheTangentPlane(double latitude)
    {
        for (var azimuth = 0.0; azimuth < 360; azimuth += 15)
        {
            var arrived = Geodesic.Direct(latitude, 10, azimuth, 100);

            Close.Absolute(100, MeridianAndParallel.Distance((latitude, 10), (arrived.Latitude, arrived.Longitude)), Tolerances.FieldMetres, FormattableString.Invariant($"latitude {latitude}, azimuth {azimuth}"));
        }
    }
}
