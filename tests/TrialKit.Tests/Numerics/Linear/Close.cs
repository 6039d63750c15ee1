namespace TrialKit.Tests.Numerics.Linear;

/// <summary>Comparison of a value with its reference, relative to the reference.</summary>
internal static class Close
{
    public static void To(double expected, double? actual, double tolerance, string what)
    {
        Assert.True(actual.HasValue, $"{what}: {expected:R} was expected, nothing was computed.");
        var error = Math.Abs(actual.Value - expected);
        Assert.True(
            error <= tolerance * Math.Max(Math.Abs(expected), double.Epsilon),
            $"{what}: {actual.Value:R} was computed, {expected:R} was expected within {tolerance:R} of it.");
    }

    /// <summary>For a value near zero: the error is set against the scale of what it was computed from.</summary>
    public static void ToWithin(double expected, double? actual, double tolerance, double scale, string what)
    {
        Assert.True(actual.HasValue, $"{what}: {expected:R} was expected, nothing was computed.");
        Assert.True(
            Math.Abs(actual.Value - expected) <= tolerance * scale,
            $"{what}: {actual.Value:R} was computed, {expected:R} was expected within {tolerance:R} of {scale:R}.");
    }
}
