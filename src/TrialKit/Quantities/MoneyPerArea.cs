using System.Globalization;

namespace TrialKit.Quantities;

/// <summary>Money per area of land, in a currency that is kept as written; negative when saved.</summary>
/// <remarks>The default is zero of no currency.</remarks>
public readonly record struct MoneyPerArea
{
    private MoneyPerArea(double perHectare, string currency) => (PerHectare, Currency) = (perHectare, currency);

    /// <summary>Money per hectare.</summary>
    public double PerHectare { get; }

    /// <summary>Money per acre.</summary>
    public double PerAcre => PerHectare * Land.HectaresPerAcre;

    /// <summary>The currency as written, such as <c>$</c>.</summary>
    public string Currency { get; }

    /// <summary>Money per hectare.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or NaN.</exception>
    public static MoneyPerArea FromPerHectare(double amount, string currency) => new(Guard.Finite(amount, "money per hectare"), currency);

    /// <summary>Money per acre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or NaN.</exception>
    public static MoneyPerArea FromPerAcre(double amount, string currency) => new(Guard.Finite(amount, "money per acre") / Land.HectaresPerAcre, currency);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PerHectare:R} {Currency}/ha");
}
