using System.Text.Json;
using TrialKit.Planning;
using UnitsNet;

namespace TrialKit.Export;

/// <summary>Writes a plan as GeoJSON (RFC 7946): strips as polygons, spots as points, WGS 84.</summary>
public static class PlanGeoJson
{
    // A hundred-millionth of a degree is about a millimetre.
    private const int Decimals = 8;

    /// <summary>Writes the features.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="corner">Where its corner lies.</param>
    /// <param name="stream">Where to; it stays open.</param>
    public static void Write(TrialPlan plan, FieldCorner corner, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(corner);
        ArgumentNullException.ThrowIfNull(stream);
        using var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" });
        json.WriteStartObject();
        json.WriteString("type", "FeatureCollection");
        json.WriteStartArray("features");
        foreach (var strip in plan.Strips)
        {
            WriteStrip(json, plan, strip, corner);
        }

        foreach (var place in plan.Spots)
        {
            WriteSpot(json, place, corner);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteStrip(Utf8JsonWriter json, TrialPlan plan, PlannedStrip strip, FieldCorner corner)
    {
        json.WriteStartObject();
        json.WriteString("type", "Feature");
        json.WriteStartObject("properties");
        json.WriteString("strip", strip.Strip.Name);
        json.WriteString("block", strip.Strip.Block);
        json.WriteString("treatment", strip.Strip.Treatment.Label);
        json.WriteNumber("order", strip.Strip.Order!.Value);
        json.WriteString("planter", strip.Strip.Note);
        json.WriteEndObject();
        json.WriteStartObject("geometry");
        json.WriteString("type", "Polygon");
        json.WriteStartArray("coordinates");
        json.WriteStartArray();

        // The outer ring runs against the clock and ends where it began.
        var right = strip.Left + strip.Width;
        foreach (var (across, along) in new[] { (strip.Left, Length.Zero), (right, Length.Zero), (right, plan.Length), (strip.Left, plan.Length), (strip.Left, Length.Zero) })
        {
            WritePlace(json, corner.Place(across, along));
        }

        json.WriteEndArray();
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteSpot(Utf8JsonWriter json, SpotPlace place, FieldCorner corner)
    {
        json.WriteStartObject();
        json.WriteString("type", "Feature");
        json.WriteStartObject("properties");
        json.WriteString("strip", place.Spot.Strip.Name);
        json.WriteString("spot", place.Spot.Name);
        json.WriteNumber("pass", place.Spot.Pass!.Value);
        json.WriteNumber("planter_row", place.Spot.PlanterRow!.Value);
        json.WriteEndObject();
        json.WriteStartObject("geometry");
        json.WriteString("type", "Point");
        json.WritePropertyName("coordinates");
        WritePlace(json, corner.Place(place.Across, place.Spot.FromStart));
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, (double Latitude, double Longitude) place)
    {
        json.WriteStartArray();
        json.WriteNumberValue(Math.Round(place.Longitude, Decimals));
        json.WriteNumberValue(Math.Round(place.Latitude, Decimals));
        json.WriteEndArray();
    }
}
