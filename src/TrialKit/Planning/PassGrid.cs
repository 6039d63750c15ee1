using UnitsNet;

namespace TrialKit.Planning;

/// <summary>The planter passes of a field, side by side from the corner, and which of them strips may take.</summary>
/// <param name="planter">Width of the planter.</param>
/// <param name="border">Passes left on each side.</param>
/// <param name="spacing">Distance between sprayer tracks; null without.</param>
/// <param name="track">Width of a track.</param>
internal sealed class PassGrid(Length planter, int border, Length? spacing, Length track)
{
    // Passes that only touch a track are free, however the metres were rounded.
    private const double TouchMetres = 1e-6;

    // A field in which so many passes in a row are crossed by tracks has no room at all.
    private const int MostSkipped = 1000;
    private readonly int edge = border;
    private int taken;

    /// <summary>Passes used so far, with the border on the far side.</summary>
    public int Taken => edge + taken + edge;

    /// <summary>Takes the next free passes side by side.</summary>
    /// <param name="count">How many.</param>
    /// <returns>The first, from 0; null when sprayer tracks lie so close that there is never room.</returns>
    public int? Take(int count)
    {
        var next = edge + taken;
        for (var first = next; first < next + MostSkipped; first++)
        {
            if (!Enumerable.Range(first, count).Any(IsCrossed))
            {
                taken = first + count - edge;
                return first;
            }
        }

        return null;
    }

    /// <summary>The edges of the tracks that lie within the passes used.</summary>
    public IEnumerable<(Length Left, Length Right)> Tracks()
    {
        if (spacing is not { } apart)
        {
            yield break;
        }

        var end = Taken * planter;
        for (var middle = apart / 2; middle - (track / 2) < end; middle += apart)
        {
            yield return (middle - (track / 2), middle + (track / 2));
        }
    }

    private bool IsCrossed(int pass)
    {
        if (spacing is not { } apart)
        {
            return false;
        }

        var (left, right) = (pass * planter.Meters, (pass + 1) * planter.Meters);
        var half = track.Meters / 2;
        var nearest = Math.Max(0, Math.Floor((left - half) / apart.Meters));
        for (var middle = (nearest + 0.5) * apart.Meters; middle - half < right; middle += apart.Meters)
        {
            if (middle + half > left + TouchMetres && middle - half < right - TouchMetres)
            {
                return true;
            }
        }

        return false;
    }
}
