using System.Collections.Immutable;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>The built-in crops. A trial's own <c>[crop]</c> overrides any figure.</summary>
/// <remarks>
/// Bushel weights and standard moistures: U.S. grain trade figures as printed in university extension tables
/// (wheat, oats and sorghum moistures are printed differently by others: 13.5, 14 and 13 here).
/// Thresholds: corn 86/50 F, Gilmore and Rogers 1958; the other rows as their source line says.
/// </remarks>
public static class CropTable
{
    private const string Trade = "U.S. bushel weights and standard moistures as printed in extension tables";

    /// <summary>The crops by name.</summary>
    public static ImmutableArray<Crop> Crops { get; } =
    [
        Grain("corn", 56, 15.5, HeatMethods.Corn),
        Grain("soybean", 60, 13, HeatMethods.ExtremesClipped("soybean 86/50", 50, 86, "common practice, no source at hand; base and ceiling as for corn")),
        Grain("wheat", 60, 13.5, HeatMethods.SimpleAverage("wheat 32", 32, "Oregon State University Extension")),
        Grain("barley", 48, 14.5, HeatMethods.SimpleAverage("barley 32", 32, "value from memory")),
        Grain("oats", 32, 14, HeatMethods.SimpleAverage("oats 32", 32, "taken as wheat's; value from memory")),
        Grain("sorghum", 56, 13, HeatMethods.ExtremesClipped("sorghum 86/50", 50, 86, "common practice, no source at hand; printed figures conflict")),
        Other("cotton", HeatMethods.SimpleAverage("cotton DD60", 60, "North Carolina State University Extension")),
        Other("sunflower", HeatMethods.ExtremesClipped("sunflower 99/50", 50, 99, "common practice, no source at hand; 44 F without a ceiling is in use too, value from memory")),
        Other("sugar beet", HeatMethods.ExtremesClipped("sugar beet 86/50", 50, 86, "common practice, no source at hand; 34 F is in use too, value from memory")),
        Other("canola", HeatMethods.SimpleAverage("canola 41", 41, "value from memory")),
        Other("dry bean", HeatMethods.ExtremesClipped("dry bean 86/50", 50, 86, "value from memory")),
    ];

    /// <summary>A crop by name, without regard to case and outer spaces; null when there is none.</summary>
    public static Crop? Find(string name) => Crops.FirstOrDefault(crop => Identifier.Same(crop.Name, name));

    private static Crop Grain(string name, double pounds, double moisture, HeatMethod heat) =>
        new(name, Mass.FromPounds(pounds), Ratio.FromPercent(moisture), heat, Trade);

    private static Crop Other(string name, HeatMethod heat) => new(name, Bushel: null, StandardMoisture: null, heat, heat.Source);
}
