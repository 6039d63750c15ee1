using System.Collections.Immutable;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>The heat-unit methods that a trial can name.</summary>
public static class HeatMethods
{
    /// <summary>Corn growing degree-days, 86/50 F: each extreme is brought within 50 and 86 F, then averaged.</summary>
    public static HeatMethod Corn { get; } =
        ExtremesClipped("corn 86/50", 50, 86, "Gilmore & Rogers 1958, Agron. J. 50:611-615; Barger 1969");

    /// <summary>The simple average above 50 F, the plainest figure to compare with.</summary>
    public static HeatMethod Average50 { get; } =
        SimpleAverage("simple average 50", 50, "McMaster & Wilhelm 1997, Agric. For. Meteorol. 87:291-300, without clipping of the extremes");

    /// <summary>Crop heat units, each part at least zero, as Ontario counts them.</summary>
    public static HeatMethod CropHeatUnits { get; } = new(
        "crop heat units", HeatRule.CropHeatUnits, Temperature.FromDegreesCelsius(4.4), Upper: null, "Brown & Bootsma 1993; Ontario Ministry of Agriculture: each part at least 0");

    /// <summary>Crop heat units whose parts may fall below zero, as Agriculture Canada prints the formula.</summary>
    public static HeatMethod CropHeatUnitsUnfloored { get; } = CropHeatUnits with
    {
        Name = "crop heat units unfloored",
        Source = "Brown & Bootsma 1993; Agriculture Canada",
        IsFloored = false,
    };

    /// <summary>The methods that have a name of their own: these and each crop's.</summary>
    public static ImmutableArray<HeatMethod> All => [Corn, Average50, .. CropTable.Crops.Select(crop => crop.Heat).Where(method => method != Corn), CropHeatUnits, CropHeatUnitsUnfloored];

    /// <summary>The methods set side by side for teaching: the same thresholds of 86 and 50 F, each way of counting, and crop heat units.</summary>
    public static ImmutableArray<HeatMethod> SideBySide { get; } =
    [
        Average50, Corn,
        .. new[]
        {
            "mean clipped 86/50", "single sine 86/50 none", "single sine 86/50 horizontal", "single sine 86/50 intermediate", "single sine 86/50 vertical",
            "double sine 86/50 horizontal", "single triangle 86/50 horizontal", "double triangle 86/50 horizontal",
        }.Select(name => HeatMethodName.Read(name)!),
        CropHeatUnits,
    ];

    /// <summary>How a method that has no name of its own is named, for messages.</summary>
    public static string NameForm => HeatMethodName.Form;

    /// <summary>A method by its own name, or by a name that spells out rule and thresholds such as <c>single sine 86/50 horizontal</c>.</summary>
    /// <param name="name">The name, without regard to case and outer spaces.</param>
    /// <returns>Null when there is none.</returns>
    public static HeatMethod? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return All.FirstOrDefault(method => Identifier.Same(method.Name, name)) ?? HeatMethodName.Read(name);
    }

    /// <summary>The simple average of a threshold in degrees Fahrenheit.</summary>
    public static HeatMethod SimpleAverage(string name, double lowerF, string source) =>
        new(name, HeatRule.SimpleAverage, Temperature.FromDegreesFahrenheit(lowerF), Upper: null, source);

    /// <summary>The extremes-clipped method of two thresholds in degrees Fahrenheit.</summary>
    public static HeatMethod ExtremesClipped(string name, double lowerF, double upperF, string source) =>
        new(name, HeatRule.ExtremesClipped, Temperature.FromDegreesFahrenheit(lowerF), Temperature.FromDegreesFahrenheit(upperF), source);
}
