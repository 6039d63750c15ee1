using System.Globalization;

namespace TrialKit.Benchmarks.Calibration;

/// <summary>A share found over null trials beside the one it should be.</summary>
/// <param name="Layout">The layout simulated.</param>
/// <param name="What">The test or interval.</param>
/// <param name="Nominal">The level or confidence.</param>
/// <param name="Found">The share found.</param>
/// <param name="Holds">Whether it is as it should be.</param>
/// <param name="Expectation">What it should be, in words.</param>
internal sealed record CheckedRate(string Layout, string What, double Nominal, Tally Found, bool Holds, string Expectation)
{
    /// <summary>A test whose rate should be its level.</summary>
    public static CheckedRate Level(string layout, string what, double alpha, Tally found) => new(layout, what, alpha, found, found.Agrees(alpha), "the level");

    /// <summary>A test whose rate should not be above its level.</summary>
    public static CheckedRate AtMost(string layout, string what, double alpha, Tally found) => new(layout, what, alpha, found, found.IsAtMost(alpha), "at most the level");

    /// <summary>An interval that should hold the truth this often, within a point of a hundred.</summary>
    public static CheckedRate Coverage(string layout, string what, double confidence, Tally found) => new(layout, what, confidence, found, Math.Abs(found.Share - confidence) <= 0.01, "the confidence, within 0.01");

    /// <summary>A wrong test: its rate is shown, not held to anything.</summary>
    public static CheckedRate Wrong(string layout, string what, double alpha, Tally found) => new(layout, what, alpha, found, Holds: false, "far above: wrong");

    /// <summary>The line of a table.</summary>
    public string ToRow() => string.Create(CultureInfo.InvariantCulture, $"| {Layout} | {What} | {Nominal:0.00} | {Found} | {Expectation} | {(Holds ? "yes" : "no")} |");
}
