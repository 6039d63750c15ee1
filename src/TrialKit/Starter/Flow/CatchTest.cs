using System.Collections.Immutable;
using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Starter.Flow;

/// <summary>What a jug under one outlet should hold after some seconds, and how far rows may differ.</summary>
/// <param name="Seconds">How long, above 0.</param>
/// <param name="Expected">The volume expected.</param>
/// <param name="Low">The least that passes.</param>
/// <param name="High">The most that passes.</param>
public sealed record CatchTest(double Seconds, Volume Expected, Volume Low, Volume High)
{
    /// <summary>How far a row may be off: 5 % of the volume expected (common practice, no source).</summary>
    public const double Tolerance = 0.05;

    /// <summary>The times used.</summary>
    public static ImmutableArray<double> Times { get; } = [15, 30, 60];

    /// <summary>The test of one time.</summary>
    /// <param name="flow">Flow of the outlet, above zero.</param>
    /// <param name="seconds">How long, above 0.</param>
    public static CatchTest Of(VolumeFlow flow, double seconds)
    {
        var litres = Guard.Positive(flow.LitersPerMinute, "flow, L/min", nameof(flow)) * Guard.Positive(seconds, "seconds") / 60;
        return new(seconds, Volume.FromLiters(litres), Volume.FromLiters(litres * (1 - Tolerance)), Volume.FromLiters(litres * (1 + Tolerance)));
    }
}
