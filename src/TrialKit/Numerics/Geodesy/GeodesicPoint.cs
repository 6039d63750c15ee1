using System.Runtime.InteropServices;

namespace TrialKit.Numerics.Geodesy;

/// <summary>A place on the ellipsoid and the direction in which a geodesic passes it.</summary>
/// <param name="Latitude">Degrees north.</param>
/// <param name="Longitude">Degrees east, from -180 to 180.</param>
/// <param name="Azimuth">Degrees from north over east, from 0 to 360.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct GeodesicPoint(double Latitude, double Longitude, double Azimuth);
