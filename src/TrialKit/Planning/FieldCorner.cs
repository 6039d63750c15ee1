using TrialKit.Numerics.Geodesy;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Planning;

/// <summary>Where the places of a plan lie on the earth.</summary>
/// <param name="latitude">Degrees north of the corner, WGS 84.</param>
/// <param name="longitude">Degrees east of it.</param>
/// <param name="bearing">Direction of the rows seen from the corner, degrees from north over east.</param>
public sealed class FieldCorner(double latitude, double longitude, double bearing)
{
    private const double RightAngle = 90;
    private readonly double latitude = Guard.Between(latitude, -90, 90, "latitude of the corner");
    private readonly double longitude = Guard.Between(longitude, -180, 180, "longitude of the corner");
    private readonly double bearing = Guard.Between(bearing, 0, 360, "bearing of the rows");

    /// <summary>The corner of a field; null when the field does not say where it lies.</summary>
    public static FieldCorner? Of(FieldSpace field)
    {
        ArgumentNullException.ThrowIfNull(field);
        return field is { CornerLatitude: { } latitude, CornerLongitude: { } longitude, Bearing: { } bearing } ? new(latitude, longitude, bearing) : null;
    }

    /// <summary>The latitude and longitude of a place: first across the rows to the right, then along them.</summary>
    /// <param name="across">Distance to the right of the corner, 0 or more.</param>
    /// <param name="along">Distance along the rows, 0 or more.</param>
    public (double Latitude, double Longitude) Place(Length across, Length along)
    {
        var turned = Geodesic.Direct(latitude, longitude, bearing + RightAngle, across.Meters);
        var place = Geodesic.Direct(turned.Latitude, turned.Longitude, turned.Azimuth - RightAngle, along.Meters);
        return (place.Latitude, place.Longitude);
    }
}
