using System.Globalization;
using UnitsNet;

namespace TrialKit.Quantities;

/// <summary>Plants standing per area of land.</summary>
/// <remarks>Finite, never negative; the default is zero. A difference may be negative and is a <see cref="PlantDensityDifference"/>.</remarks>
public readonly record struct PlantDensity : IComparable<PlantDensity>
{
    private PlantDensity(double perHectare) => PerHectare = perHectare;

    /// <summary>Plants per hectare.</summary>
    public double PerHectare { get; }

    /// <summary>Plants per acre.</summary>
    public double PerAcre => PerHectare * Land.HectaresPerAcre;

    /// <summary>A density from plants per hectare.</summary>
    /// <param name="plants">0 or more, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static PlantDensity FromPerHectare(double plants) => new(Guard.NotNegative(plants, "plants per hectare"));

    /// <summary>A density from plants per acre.</summary>
    /// <param name="plants">0 or more, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or NaN.</exception>
    public static PlantDensity FromPerAcre(double plants) => new(Guard.NotNegative(plants, "plants per acre") / Land.HectaresPerAcre);

    /// <summary>Plants counted along a length of row.</summary>
    /// <param name="plants">Plants counted, 0 or more.</param>
    /// <param name="row">Length of row walked, above zero (of all rows counted together).</param>
    /// <param name="spacing">Distance between rows, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, zero length, infinite or NaN.</exception>
    public static PlantDensity FromRowCount(double plants, Length row, Length spacing)
    {
        Guard.NotNegative(plants, "plants counted");
        var area = Guard.Positive(row.Meters, "length of row, m", nameof(row)) * Guard.Positive(spacing.Meters, "row spacing, m", nameof(spacing));
        return new(plants * Land.SquareMetresPerHectare / area);
    }

    /// <summary>Plants counted inside a hoop thrown on the ground.</summary>
    /// <param name="plants">Plants counted, 0 or more.</param>
    /// <param name="diameter">Inner diameter of the hoop, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, zero diameter, infinite or NaN.</exception>
    public static PlantDensity FromHoop(double plants, Length diameter)
    {
        Guard.NotNegative(plants, "plants counted");
        var radius = Guard.Positive(diameter.Meters, "hoop diameter, m", nameof(diameter)) / 2;
        return new(plants * Land.SquareMetresPerHectare / (Math.PI * radius * radius));
    }

    /// <summary>The length of one row that covers a thousandth of an acre.</summary>
    /// <param name="spacing">Distance between rows, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative, infinite or NaN.</exception>
    public static Length RowOfThousandthAcre(Length spacing) =>
        Length.FromFeet(522.72 / Guard.Positive(spacing.Inches, "row spacing, in", nameof(spacing)));

    /// <summary>The length of one row that covers a thousandth of an acre, or of a hectare.</summary>
    /// <param name="spacing">Distance between rows, above zero.</param>
    /// <param name="units">Acres or hectares.</param>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative, infinite or NaN.</exception>
    public static Length RowOfThousandth(Length spacing, UnitSystem units) => units == UnitSystem.Us
        ? RowOfThousandthAcre(spacing)
        : Length.FromMeters(Land.SquareMetresPerHectare / 1000 / Guard.Positive(spacing.Meters, "row spacing, m", nameof(spacing)));

    /// <summary>The difference of two densities.</summary>
    public static PlantDensityDifference operator -(PlantDensity left, PlantDensity right) =>
        PlantDensityDifference.FromPerHectare(left.PerHectare - right.PerHectare);

    /// <summary>The difference of two densities.</summary>
    public static PlantDensityDifference Subtract(PlantDensity left, PlantDensity right) => left - right;

    /// <inheritdoc/>
    public int CompareTo(PlantDensity other) => PerHectare.CompareTo(other.PerHectare);

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{PerHectare:R} plants/ha");

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(PlantDensity left, PlantDensity right) => left.PerHectare < right.PerHectare;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(PlantDensity left, PlantDensity right) => left.PerHectare > right.PerHectare;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(PlantDensity left, PlantDensity right) => left.PerHectare <= right.PerHectare;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(PlantDensity left, PlantDensity right) => left.PerHectare >= right.PerHectare;
}
