using TrialKit.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics.EventTimes;

/// <summary>Counts that several tests fit.</summary>
internal static class EventCounts
{
    /// <summary>Visits of set A: 40 seeds, 35 up.</summary>
    public static readonly double[] SetATimes = [6, 7, 8, 9, 10, 11, 12, 13, 14];

    /// <summary>Newly up at the visits of set A.</summary>
    public static readonly double[] SetANew = [0, 2, 8, 12, 6, 4, 2, 0, 1];

    /// <summary>30 seeds, 28 up (Onofri, Mesgaran and Ritz 2022, Weed Science).</summary>
    public static IntervalCounts Onofri { get; } = IntervalCounts.FromVisits([5, 10, 15, 20], [10, 15, 2, 1], 2);

    /// <summary>Set A as intervals, 5 seeds never up.</summary>
    public static IntervalCounts SetA { get; } = IntervalCounts.FromVisits(SetATimes, SetANew, 5);

    /// <summary>Set A seen at three visits only.</summary>
    public static IntervalCounts SetAThreeVisits { get; } = IntervalCounts.FromVisits([8, 11, 14], [10, 22, 3], 5);

    /// <summary>The counts of a case by name.</summary>
    public static IntervalCounts Named(string name) => name switch
    {
        "Onofri" => Onofri,
        "SetA" => SetA,
        _ => SetAThreeVisits,
    };
}
