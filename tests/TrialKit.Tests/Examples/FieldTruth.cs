namespace TrialKit.Tests.Examples;

/// <summary>How much blocks, strips and planter add of their own: standard deviations unless said otherwise.</summary>
internal sealed record FieldTruth
{
    /// <summary>Days by which a whole block comes up sooner or later.</summary>
    public required double BlockMedianDays { get; init; }

    /// <summary>Days by which a strip does.</summary>
    public required double StripMedianDays { get; init; }

    /// <summary>Share of seeds by which a strip's emergence differs.</summary>
    public required double StripShare { get; init; }

    /// <summary>Difference of a strip's steepness.</summary>
    public required double StripSteepness { get; init; }

    /// <summary>Yield by which a whole block differs, in the example's yield unit.</summary>
    public required double BlockYield { get; init; }

    /// <summary>Yield by which a strip does.</summary>
    public required double StripYield { get; init; }

    /// <summary>Mean grain moisture at harvest, %; strips differ by 0.4.</summary>
    public required double Moisture { get; init; }

    /// <summary>Mean seed depth, in the example's short length.</summary>
    public required double Depth { get; init; }

    /// <summary>Depth by which a whole strip differs.</summary>
    public required double StripDepth { get; init; }

    /// <summary>Seed depth within a strip.</summary>
    public required double DepthSpread { get; init; }

    /// <summary>How far a seed lies from its place in the row, in the example's short length.</summary>
    public required double DropError { get; init; }

    /// <summary>Probability that a seed falls together with the one before it.</summary>
    public double Doubles { get; init; }

    /// <summary>Probability that a plant that came up dies some days later.</summary>
    public double Deaths { get; init; }
}
