using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>The soil a limit is for, in its source's own terms.</summary>
public enum LimitSoil
{
    /// <summary>The source does not tell soils apart.</summary>
    Any,

    /// <summary>Sandy soil.</summary>
    Sandy,

    /// <summary>Medium and fine soil.</summary>
    MediumAndFine,

    /// <summary>Cation exchange capacity below 7 meq/100 g, or just 7.</summary>
    ExchangeUpTo7,

    /// <summary>Cation exchange capacity above 7 meq/100 g.</summary>
    ExchangeAbove7,

    /// <summary>Cation exchange capacity below 12 meq/100 g, or just 12.</summary>
    ExchangeUpTo12,

    /// <summary>Cation exchange capacity above 12 meq/100 g.</summary>
    ExchangeAbove12,
}

/// <summary>Whether a soil is the one that a limit is for.</summary>
internal static class LimitSoils
{
    /// <summary>Null when what is known of the soil does not tell; it is asked for then, never assumed.</summary>
    /// <remarks>Sources print "below" and "above" a capacity; one just at the mark takes the stricter limit.</remarks>
    public static bool? Holds(LimitSoil limit, SoilClass? soil, double? exchange) => limit switch
    {
        LimitSoil.Sandy => soil is { } known ? known == SoilClass.Sandy : null,
        LimitSoil.MediumAndFine => soil is { } known ? known != SoilClass.Sandy : null,
        LimitSoil.ExchangeUpTo7 => exchange is { } known ? known <= 7 : null,
        LimitSoil.ExchangeAbove7 => exchange is { } known ? known > 7 : null,
        LimitSoil.ExchangeUpTo12 => exchange is { } known ? known <= 12 : null,
        LimitSoil.ExchangeAbove12 => exchange is { } known ? known > 12 : null,
        _ => true,
    };

    /// <summary>The soil in words.</summary>
    public static string Words(LimitSoil limit) => limit switch
    {
        LimitSoil.Sandy => "sandy soil",
        LimitSoil.MediumAndFine => "medium and fine soil",
        LimitSoil.ExchangeUpTo7 => "CEC below 7",
        LimitSoil.ExchangeAbove7 => "CEC above 7",
        LimitSoil.ExchangeUpTo12 => "CEC below 12",
        LimitSoil.ExchangeAbove12 => "CEC above 12",
        _ => "any soil",
    };

    /// <summary>What to give so that the limit can be chosen.</summary>
    public static string Question(LimitSoil limit) => limit is LimitSoil.Sandy or LimitSoil.MediumAndFine
        ? "the soil's class, sandy, medium or fine (soil_class under [site], or --soil)"
        : "the soil's cation exchange capacity (cec under [site], or --cec)";
}
