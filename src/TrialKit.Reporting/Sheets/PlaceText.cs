using TrialKit.Planning;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Sheets;

/// <summary>The spots of a strip in one line.</summary>
public static class PlaceText
{
    /// <summary>Distances from the near end: <c>92, 415, 700, 981 ft</c>.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="strip">The strip.</param>
    /// <param name="units">The units printed.</param>
    public static string Of(TrialPlan plan, PlannedStrip strip, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(strip);
        var places = plan.Spots.Where(place => ReferenceEquals(place.Spot.Strip, strip.Strip)).Select(place => LengthText.Distance(place.Spot.FromStart, units)).ToArray();
        return string.Join(", ", places.Select((place, index) => index < places.Length - 1 ? place[..place.LastIndexOf(' ')] : place));
    }
}
