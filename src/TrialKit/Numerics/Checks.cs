using System.Globalization;
using System.Runtime.CompilerServices;

namespace TrialKit.Numerics;

/// <summary>Guards of the numerical core: each says what was found and what was expected.</summary>
internal static class Checks
{
    /// <summary>At least <paramref name="least"/> values, every one finite.</summary>
    public static void Sample(ReadOnlySpan<double> values, int least, [CallerArgumentExpression(nameof(values))] string name = "")
    {
        if (values.Length < least)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{values.Length} values were found; at least {least} were expected."), name);
        }

        for (var i = 0; i < values.Length; i++)
        {
            if (!double.IsFinite(values[i]))
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"Value {i + 1} of {values.Length} is {values[i]}; a finite number was expected."), name);
            }
        }
    }

    /// <summary>A finite number.</summary>
    public static void Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!double.IsFinite(value))
        {
            throw OutOfRange(value, "a finite number", name);
        }
    }

    /// <summary>Any number, infinite ones included, but not NaN.</summary>
    public static void Number(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (double.IsNaN(value))
        {
            throw OutOfRange(value, "a number", name);
        }
    }

    /// <summary>A number from 0 to 1, both included.</summary>
    public static void Probability(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value >= 0 && value <= 1))
        {
            throw OutOfRange(value, "a probability from 0 to 1", name);
        }
    }

    /// <summary>A number between 0 and 1, neither included.</summary>
    public static void OpenProbability(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0 && value < 1))
        {
            throw OutOfRange(value, "a number between 0 and 1, neither included", name);
        }
    }

    /// <summary>Degrees of freedom: above zero; positive infinity is allowed.</summary>
    public static void DegreesOfFreedom(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0))
        {
            throw OutOfRange(value, "degrees of freedom above 0", name);
        }
    }

    /// <summary>A finite number above zero.</summary>
    public static void Positive(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0 && double.IsFinite(value)))
        {
            throw OutOfRange(value, "a finite number above 0", name);
        }
    }

    /// <summary>A whole number no smaller than <paramref name="least"/>.</summary>
    public static void AtLeast(int value, int least, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (value < least)
        {
            throw new ArgumentOutOfRangeException(
                name, string.Create(CultureInfo.InvariantCulture, $"{value} was found; {least} or more was expected."));
        }
    }

    private static ArgumentOutOfRangeException OutOfRange(double found, string expected, string name) =>
        new(name, string.Create(CultureInfo.InvariantCulture, $"{found} was found; {expected} was expected."));
}
