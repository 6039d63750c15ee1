using System.Globalization;

namespace TrialKit.Trials;

/// <summary>A guaranteed analysis in percent by weight: nitrogen, phosphate, potash and sulfur.</summary>
/// <param name="N">Nitrogen, % N.</param>
/// <param name="P2O5">Available phosphate, % P2O5.</param>
/// <param name="K2O">Soluble potash, % K2O.</param>
/// <param name="S">Sulfur, % S; 0 when not stated.</param>
public readonly record struct NutrientAnalysis(double N, double P2O5, double K2O, double S)
{
    /// <summary>The analysis as the trade writes it, such as <c>10-34-0</c> or <c>12-0-0-26S</c>.</summary>
    public override string ToString() => S > 0
        ? string.Create(CultureInfo.InvariantCulture, $"{N}-{P2O5}-{K2O}-{S}S")
        : string.Create(CultureInfo.InvariantCulture, $"{N}-{P2O5}-{K2O}");
}
