using System.Globalization;

namespace TrialKit.Tests.Examples;

/// <summary>
/// The truth of <c>example-trials/three-farms</c>: drag chains on three farms, truly worth 2.5, 1 and 3.5 of 100 seeds and 5, 1 and 6 bushels
/// an acre: more than nothing everywhere, and not the same anywhere.
/// </summary>
internal static class ThreeFarms
{
    /// <summary>The folder that holds the three.</summary>
    public const string Folder = "three-farms";

    /// <summary>The plans, in the order in which their folders are read.</summary>
    public static IReadOnlyList<ExamplePlan> Plans { get; } =
    [
        Plan("bottom", 20150512, new(2015, 5, 12), 5, (0.870, 0.905), (184, 190)),
        Plan("creek", 20150504, new(2015, 5, 4), 5, (0.900, 0.925), (196, 201)),
        Plan("hill", 20150507, new(2015, 5, 7), 4, (0.920, 0.930), (172, 173)),
    ];

    private static ExamplePlan Plan(string name, ulong seed, DateOnly planted, int pairs, (double None, double Chains) share, (double None, double Chains) yield) => DragChains.Plan with
    {
        Name = $"{Folder}/{name}",
        Seed = seed,
        Planted = planted,
        Blocks = pairs,
        Treatments =
        [
            DragChains.Plan.Treatments[0] with { Share = share.None, Yield = yield.None },
            DragChains.Plan.Treatments[1] with { Share = share.Chains, Yield = yield.Chains },
        ],
        Field = DragChains.Plan.Field with { StripYield = 2 },
        StripName = (_, _, order) => string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(name[0])}{order:00}"),
        StandSpots = 4,
        PlanterRows = [],
        FlaggedSpots = [],
        VisitDays = [],
    };
}
