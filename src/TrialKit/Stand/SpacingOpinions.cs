using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Stand;

/// <summary>What has been published on the standard deviation of plant spacing and corn yield: sources that disagree, side by side.</summary>
public static class SpacingOpinions
{
    /// <summary>The sources.</summary>
    public static ImmutableArray<PublishedFinding> Published { get; } =
    [
        new("plant spacing", "Nielsen, AGRY-91-01, as cited by Wisconsin 2000", "SD above 2 in", "2.5 bu/ac less per inch"),
        new("plant spacing", "Nielsen 2004", "one site-year", "2.2 bu/ac less per inch"),
        new("plant spacing", "Lauer & Rankin 2004", "SD up to and above 12 cm", "nothing lost up to 12 cm; then 1.06 % per cm"),
        new("plant spacing", "Liu et al. 2004, Crop Sci. 44:847-854", "spacing made uneven", "no change of yield seen"),
        new("plant spacing", "survey of 354 fields", "corn fields as planted", "mean SD about 4.5 in"),
    ];
}
