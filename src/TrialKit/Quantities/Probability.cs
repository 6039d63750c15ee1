using System.Globalization;

namespace TrialKit.Quantities;

/// <summary>A probability, from 0 to 1.</summary>
/// <remarks>The default value is zero.</remarks>
public readonly record struct Probability
{
    private Probability(double value) => Value = value;

    /// <summary>The probability as a number from 0 to 1.</summary>
    public double Value { get; }

    /// <summary>A probability from a number.</summary>
    /// <param name="value">From 0 to 1; a rounding error of up to 1e-12 beyond either end is taken as that end.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 1 or NaN.</exception>
    public static Probability Of(double value) =>
        new(Math.Clamp(Guard.Between(value, -1e-12, 1 + 1e-12, "a probability"), 0, 1));

    /// <inheritdoc/>
    public override string ToString() => Value.ToString("R", CultureInfo.InvariantCulture);
}
