using System.Text.Json;
using TrialKit.Numerics.Mixed;

namespace TrialKit.Tests.Numerics.Mixed;

/// <summary>A case of the mixed-model reference: its columns, factors numbered in the order the reference codes them.</summary>
internal sealed class MixedCase
{
    private readonly JsonElement _data;

    private MixedCase(string name, JsonElement root)
    {
        Name = $"{name} ({root.GetProperty("source").GetString()})";
        _data = root.GetProperty("data");
        Values = root.GetProperty("values");
    }

    public string Name { get; }

    public JsonElement Values { get; }

    public static MixedCase Load(string name, string file = "mixed/mixed.json") => new(name, ReferenceData.Json(file).GetProperty(name));

    public double[] Numbers(string column) => [.. _data.GetProperty(column).EnumerateArray().Select(v => v.GetDouble())];

    /// <summary>Levels numbered in alphabetical order, as the reference coded them.</summary>
    public int[] Levels(string column) => Levels(column, out _);

    public int[] Levels(string column, out string[] names)
    {
        var texts = _data.GetProperty(column).EnumerateArray().Select(v => v.ToString()).ToArray();
        var sorted = texts.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        names = sorted;
        return [.. texts.Select(text => Array.IndexOf(sorted, text))];
    }

    public void HasFixed(MixedFit fit, JsonElement expected)
    {
        foreach (var (term, index) in expected.EnumerateArray().Select((term, index) => (term, index)))
        {
            var weights = new double[fit.Coefficients.Length];
            weights[index] = 1;
            Agrees(fit.Contrast(weights), term, $"{Name}, {term.GetProperty("term").GetString()}");
        }
    }

    public static void Agrees(MixedContrast actual, JsonElement expected, string what)
    {
        Close.Relative(Estimate(expected), actual.Estimate, Tolerances.Reml, $"{what}, estimate");
        Close.Relative(expected.GetProperty("se").GetDouble(), actual.StandardError, Tolerances.Reml, $"{what}, standard error");
        Close.Relative(expected.GetProperty("df").GetDouble(), actual.DegreesOfFreedom, Tolerances.Reml, $"{what}, degrees of freedom");
        if (expected.TryGetProperty("p", out var p))
        {
            Close.Relative(p.GetDouble(), actual.P, Tolerances.RemlProbability, $"{what}, p");
        }
    }

    public void HasTest(MixedFit fit, JsonElement anova, string term, int firstColumn, int rows)
    {
        var line = anova.EnumerateArray().Single(l => l.GetProperty("term").GetString() == term);
        var weights = new double[rows, fit.Coefficients.Length];
        for (var r = 0; r < rows; r++)
        {
            weights[r, firstColumn + r] = 1;
        }

        var test = fit.Test(weights)!;

        Assert.Equal(line.GetProperty("numdf").GetInt32(), test.NumeratorDegrees);
        Close.Relative(line.GetProperty("F").GetDouble(), test.F, Tolerances.Reml, $"{Name}, {term}, F");
        Close.Relative(line.GetProperty("dendf").GetDouble(), test.DenominatorDegrees, Tolerances.Reml, $"{Name}, {term}, degrees of freedom");
        Close.Relative(line.GetProperty("p").GetDouble(), test.P, Tolerances.RemlProbability, $"{Name}, {term}, p");
    }

    public static double[,] Intercept(int rows)
    {
        var design = new double[rows, 1];
        for (var i = 0; i < rows; i++)
        {
            design[i, 0] = 1;
        }

        return design;
    }

    private static double Estimate(JsonElement expected) =>
        (expected.TryGetProperty("est", out var estimate) ? estimate : expected.GetProperty("mean")).GetDouble();
}
