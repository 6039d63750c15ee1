using System.Collections.Immutable;

namespace TrialKit.Stand;

/// <summary>Gaps between plants by the seed spacings they span: how seed was dropped and came up.</summary>
/// <remarks>
/// With r the gap over the seed spacing, the classes are r up to 0.5, up to 1.5, up to 2.5, up to 3.5 and beyond
/// (ISO 7256-1:1984 as described by Kachman and Smith 1995, Trans. ASAE 38:379-387).
/// </remarks>
public sealed record SpacingClasses
{
    // A reading on a limit belongs below it, also when the conversion of its unit left a rounding error.
    private const double Rounding = 1e-9;

    private SpacingClasses(ImmutableArray<int> counts)
    {
        Counts = counts;
        Gaps = counts.Sum();
    }

    /// <summary>Gaps in each of the five classes, the narrowest first.</summary>
    public ImmutableArray<int> Counts { get; }

    /// <summary>Gaps in all, 1 or more.</summary>
    public int Gaps { get; }

    /// <summary>Percent of gaps of half a seed spacing or less.</summary>
    public double Multiples => 100.0 * Counts[0] / Gaps;

    /// <summary>Percent of gaps above half and up to one and a half seed spacings.</summary>
    public double Singles => 100.0 * Counts[1] / Gaps;

    /// <summary>Percent of gaps of more than one and a half seed spacings.</summary>
    public double Missed => 100.0 * (Counts[2] + Counts[3] + Counts[4]) / Gaps;

    /// <summary>The multiples as percent of the seed places that the gaps span (value from memory of the standard).</summary>
    public double? MultiplesByPlace => Places > 0 ? 100.0 * Counts[0] / Places : null;

    /// <summary>Places with one plant as percent of the seed places that the gaps span; null when the multiples are more than the rest.</summary>
    public double? SinglesByPlace => Places > 0 && Gaps >= 2 * Counts[0] ? 100.0 * (Gaps - (2 * Counts[0])) / Places : null;

    /// <summary>Empty places as percent of the seed places that the gaps span.</summary>
    public double? MissedByPlace => Places > 0 ? 100.0 * (Counts[2] + (2 * Counts[3]) + (3 * Counts[4])) / Places : null;

    private int Places => Counts[1] + (2 * Counts[2]) + (3 * Counts[3]) + (4 * Counts[4]);

    /// <summary>What a gap says of the drop of seed.</summary>
    /// <param name="ratio">The gap over the seed spacing, 0 or more.</param>
    internal static SpacingKind Kind(double ratio) => Class(ratio) switch
    {
        0 => SpacingKind.Multiple,
        1 => SpacingKind.Single,
        _ => SpacingKind.Missed,
    };

    /// <summary>The classes of gaps.</summary>
    /// <param name="ratios">Each gap over the seed spacing, 0 or more, at least one.</param>
    internal static SpacingClasses Of(ReadOnlySpan<double> ratios)
    {
        var counts = new int[5];
        foreach (var ratio in ratios)
        {
            counts[Class(ratio)]++;
        }

        return new([.. counts]);
    }

    private static int Class(double ratio) => Math.Clamp((int)Math.Ceiling(ratio - 0.5 - Rounding), 0, 4);
}
