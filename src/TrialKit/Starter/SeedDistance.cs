using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>How far from the seed a limit speaks of.</summary>
public enum SeedDistance
{
    /// <summary>With the seed.</summary>
    WithSeed,

    /// <summary>A quarter to half an inch away.</summary>
    QuarterToHalfInch,

    /// <summary>One to two inches away.</summary>
    OneToTwoInches,

    /// <summary>Over two inches away.</summary>
    OverTwoInches,

    /// <summary>A band two inches beside and two below.</summary>
    BesideAndBelowBand,
}

/// <summary>Which distances a placement of the trade answers to.</summary>
internal static class SeedDistances
{
    /// <summary>
    /// A band two inches beside and two below lies 2.8 inches from the seed; one on the surface two inches beside the row is read as two inches away, whatever the depth
    /// of the seed. A dribbled stream has no stated distance.
    /// </summary>
    public static ReadOnlySpan<SeedDistance> Of(Placement placement) => placement switch
    {
        Placement.InFurrow => [SeedDistance.WithSeed],
        Placement.BesideAndBelow or Placement.BesideAndBelowBothSides => [SeedDistance.OverTwoInches, SeedDistance.BesideAndBelowBand],
        Placement.BesideOnSurface => [SeedDistance.OneToTwoInches],
        _ => [],
    };
}
