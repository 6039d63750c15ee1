using System.Text.Json;

namespace TrialKit.Tests.Numerics.Pairs;

/// <summary>The paired data sets of <c>reference-data/pairs/paired.json</c> that carry their differences.</summary>
internal static class PairCases
{
    public static IEnumerable<(string Name, double[] Differences, JsonElement Values)> All()
    {
        foreach (var item in ReferenceData.Json("pairs/paired.json").EnumerateObject())
        {
            if (item.Value.GetProperty("data").ValueKind == JsonValueKind.Object)
            {
                double[] differences = [.. item.Value.GetProperty("data").GetProperty("d").EnumerateArray().Select(d => d.GetDouble())];
                yield return (item.Name, differences, item.Value.GetProperty("values"));
            }
        }
    }

    public static double Number(this JsonElement values, string group, string name) =>
        values.GetProperty(group).GetProperty(name).GetDouble();
}
