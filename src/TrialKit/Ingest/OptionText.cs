using System.Globalization;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Toml;
using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Ingest;

/// <summary>Reads quantities of a command line as <c>trial.toml</c> writes them: a number with its unit.</summary>
public static class OptionText
{
    /// <summary>The rate of a product: <c>5 gal/ac</c>.</summary>
    /// <exception cref="FormatException">It is no such quantity, or not above zero; the message says what was found and expected.</exception>
    public static ApplicationRate Rate(string text) => Read(text, UnitKinds.ProductRate, UnitKinds.ToProductRate);

    /// <summary>A density: <c>11.65 lb/gal</c>.</summary>
    /// <exception cref="FormatException">It is no such quantity, or not above zero.</exception>
    public static Density Density(string text) => Read(text, UnitKinds.ProductDensity, UnitKinds.ToProductDensity);

    /// <summary>A length: <c>30 in</c>.</summary>
    /// <exception cref="FormatException">It is no such quantity, or not above zero.</exception>
    public static Length Length(string text) => Read(text, UnitKinds.Length, UnitKinds.ToLength);

    /// <summary>A speed: <c>5 mph</c>.</summary>
    /// <exception cref="FormatException">It is no such quantity, or not above zero.</exception>
    public static Speed Speed(string text) => Read(text, UnitKinds.Speed, UnitKinds.ToSpeed);

    /// <summary>A pressure: <c>20 psi</c>.</summary>
    /// <exception cref="FormatException">It is no such quantity, or not above zero.</exception>
    public static Pressure Pressure(string text) => Read(text, UnitKinds.Pressure, UnitKinds.ToPressure);

    /// <summary>A cation exchange capacity in meq per 100 g: <c>14 meq/100g</c>.</summary>
    /// <exception cref="FormatException">It is no such quantity, or not above zero.</exception>
    public static double CationExchange(string text) => Read(text, UnitKinds.CationExchange, (value, _) => value);

    private static T Read<T>(string text, UnitKind kind, Func<double, string, T> convert)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!QuantityText.TrySplit(text, out var value, out var unit) || kind.Find(unit) is not { } known)
        {
            throw new FormatException($"{Wording.Quote(text)} was found; a {kind.Name} with its unit was expected, such as '{kind.Example}' (units: {Wording.Or(kind.Units)})");
        }

        return double.IsFinite(value) && value > 0
            ? convert(value, known)
            : throw new FormatException(string.Create(CultureInfo.InvariantCulture, $"{Wording.Quote(text)} was found; a {kind.Name} above zero was expected"));
    }
}
