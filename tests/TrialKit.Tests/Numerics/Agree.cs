namespace TrialKit.Tests.Numerics;

/// <summary>Comparisons that name the case in their message.</summary>
internal static class Agree
{
    /// <summary>Fails unless two numbers differ by no more than the tolerance.</summary>
    public static void Absolute(double expected, double? actual, double tolerance, string what) =>
        Assert.True(actual is { } found && Math.Abs(expected - found) <= tolerance, $"{what}: found {actual:R}, expected {expected:R} to {tolerance:R}");

    /// <summary>Fails unless two numbers differ by no more than the tolerance times the expected one.</summary>
    public static void Relative(double expected, double? actual, double tolerance, string what) =>
        Absolute(expected, actual, tolerance * Math.Abs(expected), what);
}
