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

    /// <summary>Every method that can be named in <c>trial.toml</c>: these two and each crop's own.</summary>
    public static ImmutableArray<HeatMethod> All => [Corn, Average50, .. CropTable.Crops.Select(crop => crop.Heat).Where(method => method != Corn)];

    /// <summary>A method by name, without regard to case and outer spaces; null when there is none.</summary>
    public static HeatMethod? Find(string name) => All.FirstOrDefault(method => Identifier.Same(method.Name, name));

    /// <summary>The simple average of a threshold in degrees Fahrenheit.</summary>
    public static HeatMethod SimpleAverage(string name, double lowerF, string source) =>
        new(name, HeatRule.SimpleAverage, Temperature.FromDegreesFahrenheit(lowerF), Upper: null, source);

    /// <summary>The extremes-clipped method of two thresholds in degrees Fahrenheit.</summary>
    public static HeatMethod ExtremesClipped(string name, double lowerF, double upperF, string source) =>
        new(name, HeatRule.ExtremesClipped, Temperature.FromDegreesFahrenheit(lowerF), Temperature.FromDegreesFahrenheit(upperF), source);
}
