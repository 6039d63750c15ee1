namespace TrialKit.Tests.Examples;

/// <summary>The units of an example's files.</summary>
/// <param name="Long">Unit of strips and of counted rows, as a header carries it.</param>
/// <param name="Short">Unit of positions and depths.</param>
/// <param name="ShortStep">The finest step that a person reads off the tape.</param>
/// <param name="Weight">Unit of grain weights.</param>
/// <param name="WeightStep">The finest step that the scale shows.</param>
/// <param name="WeightPerYield">Grain weight per square long unit at a yield of one.</param>
internal sealed record ExampleUnits(string Long, string Short, double ShortStep, string Weight, double WeightStep, double WeightPerYield)
{
    private const double SquareFeetPerAcre = 43560;
    private const double CornPoundsPerBushel = 56;

    /// <summary>Feet, inches and pounds; yields of corn in bushels an acre.</summary>
    public static ExampleUnits UsCorn { get; } = new("ft", "in", 0.25, "lb", 10, CornPoundsPerBushel / SquareFeetPerAcre);

    /// <summary>Metres, centimetres and kilograms; yields in tonnes a hectare.</summary>
    public static ExampleUnits Metric { get; } = new("m", "cm", 0.5, "kg", 5, 0.1);
}
