using System.Globalization;

namespace TrialKit.Quantities;

/// <summary>The level at which intervals are drawn and verdicts given: confidence is one minus alpha.</summary>
/// <remarks>The default value is 90 %, the toolkit's own default (alpha 0.10).</remarks>
public readonly record struct ConfidenceLevel
{
    /// <summary>Every alpha lies below this.</summary>
    internal const double AlphaLimit = 0.5;

    private const double DefaultAlpha = 0.10;
    private readonly double alphaOverDefault;

    private ConfidenceLevel(double alpha) => alphaOverDefault = alpha - DefaultAlpha;

    /// <summary>The share of trials with no true difference that would be called different, from 0 to 1.</summary>
    public double Alpha => DefaultAlpha + alphaOverDefault;

    /// <summary>The confidence, one minus alpha.</summary>
    public double Confidence => 1 - Alpha;

    /// <summary>The level of a given alpha.</summary>
    /// <param name="alpha">Above 0 and below 0.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these limits or NaN.</exception>
    public static ConfidenceLevel FromAlpha(double alpha) =>
        alpha is > 0 and < AlphaLimit
            ? new(alpha)
            : throw new ArgumentOutOfRangeException(nameof(alpha), alpha, string.Create(CultureInfo.InvariantCulture, $"alpha was {alpha}; a number above 0 and below 0.5 was expected, such as 0.10."));

    /// <summary>The level as printed, such as <c>90 %</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(100 * Confidence, 6)} %");
}
