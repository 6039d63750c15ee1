using System.Globalization;
using UnitsNet;

namespace TrialKit.Quantities;

/// <summary>Money per weight of grain, net of drying and hauling, in a currency that is kept as written.</summary>
/// <remarks>Above zero; the default value is no price.</remarks>
public readonly record struct GrainPrice
{
    private GrainPrice(double perKilogram, string currency) => (PerKilogram, Currency) = (perKilogram, currency);

    /// <summary>Money per kilogram.</summary>
    public double PerKilogram { get; }

    /// <summary>The currency as written, such as <c>$</c>.</summary>
    public string Currency { get; }

    /// <summary>A price per tonne.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative, infinite or NaN.</exception>
    public static GrainPrice FromPerTonne(double amount, string currency) => new(Guard.Positive(amount, "price per tonne") / 1000, currency);

    /// <summary>A price per bushel.</summary>
    /// <param name="amount">Above 0.</param>
    /// <param name="currency">As written.</param>
    /// <param name="bushel">The crop's standard weight of a bushel, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative, infinite or NaN.</exception>
    public static GrainPrice FromPerBushel(double amount, string currency, Mass bushel) =>
        new(Guard.Positive(amount, "price per bushel") / Guard.Positive(bushel.Kilograms, "weight of a bushel, kg", nameof(bushel)), currency);

    /// <summary>The price of a bushel of the given weight.</summary>
    public double PerBushel(Mass bushel) => PerKilogram * bushel.Kilograms;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PerKilogram:R} {Currency}/kg");
}
