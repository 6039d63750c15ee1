using System.Collections.Immutable;
using TrialKit.Results;

namespace TrialKit.Emergence;

/// <summary>What has been published on yield and late plants in corn: a range with its sources, never a figure of the field at hand.</summary>
public static class LatePlants
{
    /// <summary>The studies.</summary>
    public static ImmutableArray<PublishedFinding> Published { get; } =
    [
        new("late plants", "Nafziger, Carter & Graham 1991, Crop Sci. 31:811-815", "10 to 12 days late: 25, 50, 75 % of plants, all", "yield −6.8, −9.3, −7.6 %; all late −5.9 %"),
        new("late plants", "Nafziger, Carter & Graham 1991, Crop Sci. 31:811-815", "21 to 27 days late: 25, 50, 75 % of plants, all", "yield −11.0, −22.0, −22.9 %; all late −11.9 %"),
        new("late plants", "Liu et al. 2004, Crop Sci. 44:847-854", "one plant in six late", "two leaves late: yield −4 %; four leaves: −8 %"),
        new("late plants", "Nemergut et al. 2021, Agron. J.", "single plants", "little loss within 3 days of the first; then 5 % of that plant's yield a day"),
        new("late plants", "Novak & Ransom 2018, Agric. Sci. 9:1317-1336", "38 fields, worst against best row", "yield −6 %"),
    ];
}
