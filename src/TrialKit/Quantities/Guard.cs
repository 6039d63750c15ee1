using System.Globalization;
using System.Runtime.CompilerServices;

namespace TrialKit.Quantities;

/// <summary>The guards that quantities share: each refuses NaN and says what was found and expected.</summary>
internal static class Guard
{
    public static double Finite(double value, string what, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) ? value : throw Refusal(value, what, "a finite number", name);

    public static double NotNegative(double value, string what, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value >= 0 ? value : throw Refusal(value, what, "a finite number of 0 or more", name);

    public static double Positive(double value, string what, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value > 0 ? value : throw Refusal(value, what, "a finite number above 0", name);

    public static double Between(double value, double low, double high, string what, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= low && value <= high
            ? value
            : throw Refusal(value, what, string.Create(CultureInfo.InvariantCulture, $"a number from {low} to {high}"), name);

    private static ArgumentOutOfRangeException Refusal(double value, string what, string expected, string? name) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"{what} was {value}; {expected} was expected."));
}
