using System.Text.Json;
using TrialKit.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics.EventTimes;

/// <summary>The interval-censored reference cases: values from R 4.2.2 with survival 3.5.3 and npsurv 0.5.0 (generator r5_ic.R).</summary>
internal static class ReferenceIntervals
{
    private static readonly JsonElement Root = ReferenceData.Json("interval-censored/interval_censored.json");

    /// <summary>Breast-cosmesis data (Finkelstein and Wolfe 1985, Biometrics 41:933; rows from one stored copy).</summary>
    public static JsonElement Cosmesis => Root.GetProperty("cosmesis");

    /// <summary>Simulated: 4 pairs of strips of 12 plants.</summary>
    public static JsonElement Clustered => Root.GetProperty("clustered_strips_sim");

    /// <summary>Left ends, right ends and group of the rows of a case.</summary>
    public static (double[] Left, double[] Right, string[] Group) Rows(JsonElement known, string group)
    {
        var data = known.GetProperty("data");
        return (
            [.. data.GetProperty("L").EnumerateArray().Select(x => x.GetDouble())],
            [.. data.GetProperty("R").EnumerateArray().Select(x => x.ValueKind == JsonValueKind.Null ? double.PositiveInfinity : x.GetDouble())],
            [.. data.GetProperty(group).EnumerateArray().Select(x => x.ToString())]);
    }

    /// <summary>The rows of a case for which a condition on the position holds.</summary>
    public static IntervalCounts Where(double[] left, double[] right, Func<int, bool> keep)
    {
        int[] rows = [.. Enumerable.Range(0, left.Length).Where(keep)];
        return IntervalCounts.FromIntervals([.. rows.Select(i => left[i])], [.. rows.Select(i => right[i])], []);
    }
}
