using System.Text.Json;

namespace TrialKit.Tests.Numerics.Linear;

/// <summary>A trial in blocks out of a reference file: observed cells only, levels numbered in order of appearance.</summary>
internal sealed record BlockCase(string Name, double[] Y, int[] Block, int[] Treatment, string[] Treatments, JsonElement Values)
{
    public static BlockCase Load(string name, string file = "blocks/rcb.json")
    {
        var root = ReferenceData.Json(file).GetProperty(name);
        var data = root.GetProperty("data");
        var y = data.GetProperty("y").EnumerateArray().ToArray();
        var treatment = Texts(data.GetProperty("trt"));
        var block = data.TryGetProperty("block", out var blocks) ? Texts(blocks) : [.. treatment.Select(_ => "all")];
        var names = treatment.Distinct(StringComparer.Ordinal).ToArray();
        var blockNames = block.Distinct(StringComparer.Ordinal).ToArray();
        var kept = Enumerable.Range(0, y.Length).Where(i => y[i].ValueKind == JsonValueKind.Number).ToArray();
        return new BlockCase(
            $"{name} ({root.GetProperty("source").GetString()})",
            [.. kept.Select(i => y[i].GetDouble())],
            [.. kept.Select(i => Array.IndexOf(blockNames, block[i]))],
            [.. kept.Select(i => Array.IndexOf(names, treatment[i]))],
            names,
            root.GetProperty("values"));
    }

    /// <summary>Index of a treatment; numbers carry the factor's name, trt, before them in some contrasts.</summary>
    public int TreatmentOf(string name)
    {
        var index = Array.IndexOf(Treatments, name);
        index = index < 0 && name.StartsWith("trt", StringComparison.Ordinal) ? Array.IndexOf(Treatments, name[3..]) : index;
        return index >= 0 ? index : throw new ArgumentException($"{Name} has no treatment {name}.", nameof(name));
    }

    public double Number(params string[] path) => path.Aggregate(Values, (element, part) => element.GetProperty(part)).GetDouble();

    private static string[] Texts(JsonElement list) => [.. list.EnumerateArray().Select(item => item.ToString())];
}
