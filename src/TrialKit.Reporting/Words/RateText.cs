using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Starter;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Words;

/// <summary>Rates, amounts along the row, flows and money in text, each in the units that the trial prints.</summary>
public static class RateText
{
    private const int Figures = 3;
    private const double KilogramsPerHectareInPoundPerAcre = 0.45359237 / Land.HectaresPerAcre;

    /// <summary>A rate per area: <c>5.83 lb/ac</c>, <c>46.8 L/ha</c>.</summary>
    public static string PerArea(ApplicationRate rate, UnitSystem units) => units == UnitSystem.Us
        ? $"{Short(rate.PerAcreUs)} {(rate.IsVolume ? "gal" : "lb")}/ac"
        : $"{Short(rate.PerHectare)} {(rate.IsVolume ? "L" : "kg")}/ha";

    /// <summary>An amount along the row: <c>0.334 lb/1000 ft</c>, <c>0.498 g/m</c>, <c>36.7 fl oz/1000 ft</c>, <c>3.56 mL/m</c>.</summary>
    public static string AlongRow(RowAmount amount, UnitSystem units) => (units, amount.FluidOuncesPerThousandFeet) switch
    {
        (UnitSystem.Us, { } ounces) => $"{Number(ounces)} fl oz/1000 ft",
        (UnitSystem.Us, null) => $"{Number(amount.PerThousandFeetUs)} lb/1000 ft",
        _ => $"{Number(amount.ThousandthsPerMetre)} {(amount.IsVolume ? "mL" : "g")}/m",
    };

    /// <summary>What a volume comes to on a foot of row, where feet are printed: <c>1.09 mL/ft</c>; null of a weight, and in metric.</summary>
    public static string? OnAFoot(RowAmount amount, UnitSystem units) => units == UnitSystem.Us && amount.IsVolume ? $"{Number(amount.ThousandthsPerFoot)} mL/ft" : null;

    /// <summary>An amount held against limits, which are in pounds per acre: <c>8.15 lb/ac</c>, in metric with the pounds behind: <c>9.14 kg/ha (8.15 lb/ac)</c>.</summary>
    public static string Pounds(double perAcre, UnitSystem units) => Pounds(perAcre, units, Short);

    /// <summary>A limit with the decimals it is printed with: <c>8 lb/ac</c>, in metric <c>9 kg/ha (8 lb/ac)</c>.</summary>
    public static string Limit(ScreeningLimit limit, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return Pounds(limit.PoundsPerAcre, units, pounds => NumberText.Number(pounds, limit.Decimals));
    }

    /// <summary>A flow: <c>0.126 gal/min, 478 mL/min</c>; in metric the millilitres alone.</summary>
    public static string Flow(VolumeFlow flow, UnitSystem units)
    {
        var millilitres = $"{Number(flow.MillilitersPerMinute)} mL/min";
        return units == UnitSystem.Us ? $"{Number(flow.UsGallonsPerMinute)} gal/min, {millilitres}" : millilitres;
    }

    /// <summary>A speed: <c>5 mph</c>, <c>8 km/h</c>.</summary>
    public static string Speed(Speed speed, UnitSystem units) => units == UnitSystem.Us ? $"{Short(speed.MilesPerHour)} mph" : $"{Short(speed.KilometersPerHour)} km/h";

    /// <summary>A pressure: <c>31.3 psi</c>, <c>2.15 bar</c>.</summary>
    public static string Pressure(Pressure pressure, UnitSystem units) => units == UnitSystem.Us ? $"{Short(pressure.PoundsForcePerSquareInch)} psi" : $"{Short(pressure.Bars)} bar";

    /// <summary>A row spacing: <c>30 in</c>, <c>75 cm</c>.</summary>
    public static string Spacing(Length spacing, UnitSystem units) => units == UnitSystem.Us ? $"{Short(spacing.Inches)} in" : $"{Short(spacing.Centimeters)} cm";

    /// <summary>A volume caught, to the millilitre: <c>239</c>.</summary>
    public static string Millilitres(Volume volume) => NumberText.Number(volume.Milliliters, 0);

    private static string Pounds(double perAcre, UnitSystem units, Func<double, string> rule) => units == UnitSystem.Us
        ? $"{rule(perAcre)} lb/ac"
        : $"{rule(perAcre * KilogramsPerHectareInPoundPerAcre)} kg/ha ({rule(perAcre)} lb/ac)";

    // As one says it: 5 mph and not 5.00 mph.
    private static string Short(double value) => Number(value) is var text && text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;

    private static string Number(double value) => NumberText.Figures(value, Figures);
}
