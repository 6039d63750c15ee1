namespace TrialKit.Results;

/// <summary>The unit a result is printed in.</summary>
/// <param name="Symbol">As printed, such as <c>plants/ac</c>; empty for a plain number.</param>
public readonly record struct Unit(string Symbol)
{
    /// <summary>A plain number.</summary>
    public static Unit None { get; } = new("");

    /// <summary>Percent.</summary>
    public static Unit Percent { get; } = new("%");

    /// <summary>Days.</summary>
    public static Unit Days { get; } = new("d");

    /// <summary>Plants per acre.</summary>
    public static Unit PlantsPerAcre { get; } = new("plants/ac");

    /// <summary>Plants per hectare.</summary>
    public static Unit PlantsPerHectare { get; } = new("plants/ha");

    /// <summary>Fahrenheit degree-days.</summary>
    public static Unit FahrenheitDays { get; } = new("F-days");

    /// <summary>Celsius degree-days.</summary>
    public static Unit CelsiusDays { get; } = new("C-days");

    /// <summary>Inches.</summary>
    public static Unit Inches { get; } = new("in");

    /// <summary>Centimetres.</summary>
    public static Unit Centimetres { get; } = new("cm");

    /// <summary>Bushels per acre.</summary>
    public static Unit BushelsPerAcre { get; } = new("bu/ac");

    /// <summary>Tonnes per hectare.</summary>
    public static Unit TonnesPerHectare { get; } = new("t/ha");

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
