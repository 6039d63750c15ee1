namespace TrialKit.Quantities;

/// <summary>The units that outputs print; inputs carry their own.</summary>
public enum UnitSystem
{
    /// <summary>Acres, inches, bushels, degrees Fahrenheit.</summary>
    Us,

    /// <summary>Hectares, centimetres, tonnes, degrees Celsius.</summary>
    Metric,
}
