using System.Globalization;
using UnitsNet;

namespace TrialKit.Quantities;

/// <summary>Seeds dropped per area of land.</summary>
/// <remarks>Finite and above zero; the default value is no rate and gives no spacing.</remarks>
public readonly record struct SeedingRate
{
    private SeedingRate(double perHectare) => PerHectare = perHectare;

    /// <summary>Seeds per hectare.</summary>
    public double PerHectare { get; }

    /// <summary>Seeds per acre.</summary>
    public double PerAcre => PerHectare * Land.HectaresPerAcre;

    /// <summary>A rate from seeds per hectare.</summary>
    /// <param name="seeds">Above 0, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative, infinite or NaN.</exception>
    public static SeedingRate FromPerHectare(double seeds) => new(Guard.Positive(seeds, "seeds per hectare"));

    /// <summary>A rate from seeds per acre.</summary>
    /// <param name="seeds">Above 0, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative, infinite or NaN.</exception>
    public static SeedingRate FromPerAcre(double seeds) => new(Guard.Positive(seeds, "seeds per acre") / Land.HectaresPerAcre);

    /// <summary>Seeds dropped along a length of row.</summary>
    /// <param name="row">Length of row, above zero.</param>
    /// <param name="spacing">Distance between rows, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length that is zero, negative, infinite or NaN.</exception>
    public double SeedsAlong(Length row, Length spacing) =>
        PerHectare / Land.SquareMetresPerHectare
            * Guard.Positive(row.Meters, "length of row, m", nameof(row))
            * Guard.Positive(spacing.Meters, "row spacing, m", nameof(spacing));

    /// <summary>The distance between seeds in the row if every one is dropped evenly.</summary>
    /// <param name="spacing">Distance between rows, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A spacing that is zero, negative, infinite or NaN.</exception>
    /// <exception cref="InvalidOperationException">The default rate.</exception>
    public Length SeedSpacing(Length spacing) =>
        PerHectare > 0
            ? Length.FromMeters(Land.SquareMetresPerHectare / (PerHectare * Guard.Positive(spacing.Meters, "row spacing, m", nameof(spacing))))
            : throw new InvalidOperationException("The seeding rate was not set; a rate above 0 was expected.");

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PerHectare:R} seeds/ha");
}
