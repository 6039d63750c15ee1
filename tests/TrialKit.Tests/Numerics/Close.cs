using System.Globalization;

namespace TrialKit.Tests.Numerics;

/// <summary>Compares a number with its reference and says the case when they part.</summary>
internal static class Close
{
    /// <summary>Relative, against the reference; zero and the infinities must be met exactly.</summary>
    public static void Relative(double expected, double actual, double tolerance, string what)
    {
        var distance = expected == actual ? 0 : Math.Abs(actual - expected) / Math.Abs(expected);
        Assert.True(distance <= tolerance, Message(expected, actual, distance, tolerance, what));
    }

    /// <summary>Relative, of a value that may have been left undefined and must not have been.</summary>
    public static void Relative(double expected, double? actual, double tolerance, string what)
    {
        Assert.True(actual.HasValue, string.Create(CultureInfo.InvariantCulture, $"{what}: expected {expected:R}, nothing was computed"));
        Relative(expected, actual.Value, tolerance, what);
    }

    /// <summary>Absolute.</summary>
    public static void Absolute(double expected, double actual, double tolerance, string what)
    {
        var distance = Math.Abs(actual - expected);
        Assert.True(distance <= tolerance, Message(expected, actual, distance, tolerance, what));
    }

    private static string Message(double expected, double actual, double distance, double tolerance, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{what}: expected {expected:R}, was {actual:R}, off by {distance:E2}, allowed {tolerance:E2}");
}
