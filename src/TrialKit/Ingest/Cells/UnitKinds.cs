using TrialKit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace TrialKit.Ingest.Cells;

/// <summary>The kinds of quantity that input carries with a unit, and how a number and a unit become one.</summary>
internal static class UnitKinds
{
    // 2150.42 cubic inches, the U.S. bushel of dry measure; an inch is 0.0254 m (NIST Handbook 44, appendix C).
    private const double CubicMetresPerBushel = 2150.42 * 0.0254 * 0.0254 * 0.0254;

    private const double FluidOuncesPerGallon = 128;

    private const double MinutesPerHour = 60;

    public static UnitKind Length { get; } = new("length", ["ft", "in", "yd", "cm", "m"], "30 in");

    public static UnitKind Weight { get; } = new("weight", ["lb", "kg", "t"], "56 lb");

    public static UnitKind Temperature { get; } = new("temperature", ["F", "C", "0.1 C"], "50 F");

    public static UnitKind Share { get; } = new("share", ["%"], "95 %");

    public static UnitKind TestWeight { get; } = new("test weight", ["lb/bu", "kg/hL"], "56 lb/bu");

    public static UnitKind SeedingRate { get; } = new("seeding rate", ["seeds/ac", "seeds/ha", "seeds/m2"], "34000 seeds/ac");

    public static UnitKind ProductRate { get; } = new("rate of a product", ["gal/ac", "fl oz/ac", "L/ha", "lb/ac", "kg/ha"], "5 gal/ac");

    public static UnitKind ProductDensity { get; } = new("density", ["lb/gal", "kg/L"], "11.65 lb/gal");

    public static UnitKind StandDifference { get; } = new("difference of stands", ["plants/ac", "plants/ha", "plants/m2"], "1000 plants/ac");

    public static UnitKind Time { get; } = new("time", ["d", "h"], "12 h");

    public static UnitKind Heat { get; } = new("heat", ["F-days", "C-days"], "10 F-days");

    public static UnitKind Yield { get; } = new("yield", ["bu/ac", "t/ha", "kg/ha", "lb/ac"], "3 bu/ac");

    public static UnitKind CationExchange { get; } = new("cation exchange capacity", ["meq/100g", "cmol/kg"], "14 meq/100g");

    public static UnitKind Speed { get; } = new("speed", ["mph", "km/h"], "5 mph");

    public static UnitKind Land { get; } = new("area of land", ["ac", "ha"], "1200 ac");

    public static UnitKind WorkingTime { get; } = new("working time", ["h/ac", "min/ac", "h/ha", "min/ha"], "2 min/ac");

    public static UnitKind Pressure { get; } = new("pressure", ["psi", "bar", "kPa"], "20 psi");

    public static Length ToLength(double value, string unit) => unit switch
    {
        "in" => new Length(value, LengthUnit.Inch),
        "ft" => new Length(value, LengthUnit.Foot),
        "yd" => new Length(value, LengthUnit.Yard),
        "cm" => new Length(value, LengthUnit.Centimeter),
        "m" => new Length(value, LengthUnit.Meter),
        _ => throw Unknown(unit, Length),
    };

    public static Mass ToMass(double value, string unit) => unit switch
    {
        "lb" => Mass.FromPounds(value),
        "kg" => Mass.FromKilograms(value),
        "t" => Mass.FromTonnes(value),
        _ => throw Unknown(unit, Weight),
    };

    public static Temperature ToTemperature(double value, string unit) => unit switch
    {
        "F" => UnitsNet.Temperature.FromDegreesFahrenheit(value),
        "C" => UnitsNet.Temperature.FromDegreesCelsius(value),
        "0.1 C" => UnitsNet.Temperature.FromDegreesCelsius(value / 10),
        _ => throw Unknown(unit, Temperature),
    };

    public static Density ToTestWeight(double value, string unit) => unit switch
    {
        "lb/bu" => Density.FromKilogramsPerCubicMeter(Mass.FromPounds(value).Kilograms / CubicMetresPerBushel),
        "kg/hL" => Density.FromKilogramsPerCubicMeter(value * 10),
        _ => throw Unknown(unit, TestWeight),
    };

    public static SeedingRate ToSeedingRate(double value, string unit) => unit switch
    {
        "seeds/ac" => Quantities.SeedingRate.FromPerAcre(value),
        "seeds/ha" => Quantities.SeedingRate.FromPerHectare(value),
        "seeds/m2" => Quantities.SeedingRate.FromPerHectare(value * Quantities.Land.SquareMetresPerHectare),
        _ => throw Unknown(unit, SeedingRate),
    };

    public static ApplicationRate ToProductRate(double value, string unit) => unit switch
    {
        "gal/ac" => ApplicationRate.FromGallonsPerAcre(value),
        "fl oz/ac" => ApplicationRate.FromGallonsPerAcre(value / FluidOuncesPerGallon),
        "L/ha" => ApplicationRate.FromLitresPerHectare(value),
        "lb/ac" => ApplicationRate.FromPoundsPerAcre(value),
        "kg/ha" => ApplicationRate.FromKilogramsPerHectare(value),
        _ => throw Unknown(unit, ProductRate),
    };

    public static Density ToProductDensity(double value, string unit) => unit switch
    {
        "lb/gal" => LiquidDensity.FromPoundsPerGallon(value),
        "kg/L" => Density.FromKilogramsPerLiter(value),
        _ => throw Unknown(unit, ProductDensity),
    };

    public static Speed ToSpeed(double value, string unit) => unit switch
    {
        "mph" => UnitsNet.Speed.FromMilesPerHour(value),
        "km/h" => UnitsNet.Speed.FromKilometersPerHour(value),
        _ => throw Unknown(unit, Speed),
    };

    public static Area ToLand(double value, string unit) => unit switch
    {
        "ac" => Area.FromSquareMeters(value * Quantities.Land.SquareMetresPerAcre),
        "ha" => Area.FromHectares(value),
        _ => throw Unknown(unit, Land),
    };

    public static double ToHoursPerHectare(double value, string unit) => unit switch
    {
        "h/ac" => value / Quantities.Land.HectaresPerAcre,
        "min/ac" => value / MinutesPerHour / Quantities.Land.HectaresPerAcre,
        "h/ha" => value,
        "min/ha" => value / MinutesPerHour,
        _ => throw Unknown(unit, WorkingTime),
    };

    public static Pressure ToPressure(double value, string unit) => unit switch
    {
        "psi" => UnitsNet.Pressure.FromPoundsForcePerSquareInch(value),
        "bar" => UnitsNet.Pressure.FromBars(value),
        "kPa" => UnitsNet.Pressure.FromKilopascals(value),
        _ => throw Unknown(unit, Pressure),
    };

    private static ArgumentOutOfRangeException Unknown(string unit, UnitKind kind) =>
        new(nameof(unit), unit, $"Unit '{unit}' of {kind.Name} was found; one of {string.Join(", ", kind.Units)} was expected.");
}
