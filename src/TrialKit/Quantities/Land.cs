namespace TrialKit.Quantities;

/// <summary>Exact factors between the land measures of the two unit systems.</summary>
/// <remarks>The international acre and foot (NIST Handbook 44, Appendix C): 1 acre = 43,560 square feet, 1 foot = 0.3048 m.</remarks>
public static class Land
{
    /// <summary>Hectares in one acre.</summary>
    public const double HectaresPerAcre = 0.40468564224;

    /// <summary>Square metres in one acre.</summary>
    public const double SquareMetresPerAcre = HectaresPerAcre * SquareMetresPerHectare;

    /// <summary>Square metres in one hectare.</summary>
    public const double SquareMetresPerHectare = 10_000;
}
