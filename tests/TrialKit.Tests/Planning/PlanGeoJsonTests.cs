using System.Text.Json;
using TrialKit.Export;
using TrialKit.Planning;
using TrialKit.Tests.Numerics;
using TrialKit.Tests.Numerics.Geodesy;

namespace TrialKit.Tests.Planning;

public class PlanGeoJsonTests
{
    private const double FootMetres = 0.3048;

    [Theory]
    [InlineData(41.5, -93.6, 0)]
    [InlineData(41.5, -93.6, 37.5)]
    [InlineData(-33.2, 148.1, 201)]
    [InlineData(61, 25, 359)]
    public void Write_Strips_HaveTheirLengthAndWidthOnTheEllipsoid(double latitude, double longitude, double bearing)
    {
        var field = PlanTrial.Field with { CornerLatitude = latitude, CornerLongitude = longitude, Bearing = bearing };
        var plan = FieldPlan.Draw(PlanTrial.Of(2, field), 3);
        using var stream = new MemoryStream();
        PlanGeoJson.Write(plan, FieldCorner.Of(field)!, stream);
        using var json = JsonDocument.Parse(stream.ToArray());

        var features = json.RootElement.GetProperty("features").EnumerateArray().Select(feature => feature.GetProperty("geometry")).ToArray();
        var polygons = features.Where(geometry => geometry.GetProperty("type").GetString() == "Polygon").ToArray();
        Assert.Equal(plan.Strips.Length, polygons.Length);
        Assert.Equal(plan.Spots.Length, features.Length - polygons.Length);
        foreach (var polygon in polygons)
        {
            var ring = polygon.GetProperty("coordinates")[0].EnumerateArray().Select(place => (place[1].GetDouble(), place[0].GetDouble())).ToArray();
            Assert.Equal(5, ring.Length);
            Assert.Equal(ring[0], ring[4]);
            Assert.True(Turn(ring) > 0, "the ring runs with the clock");
            foreach (var (side, feet) in new[] { (0, 20.0), (1, 1180.0), (2, 20.0), (3, 1180.0) })
            {
                Close.Absolute(feet * FootMetres, MeridianAndParallel.Distance(ring[side], ring[side + 1]), Tolerances.MapMetres, $"side {side}");
            }
        }
    }

    [Fact]
    public void Of_FieldWithoutACorner_IsNull() => Assert.Null(FieldCorner.Of(PlanTrial.Field));

    // Twice the signed area in degrees: above zero when the ring runs against the clock.
    private static double Turn((double Latitude, double Longitude)[] ring) =>
        ring.Zip(ring.Skip(1), (from, to) => ((from.Longitude - ring[0].Longitude) * (to.Latitude - ring[0].Latitude)) - ((to.Longitude - ring[0].Longitude) * (from.Latitude - ring[0].Latitude))).Sum();
}
