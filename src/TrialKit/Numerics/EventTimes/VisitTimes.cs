using System.Globalization;

namespace TrialKit.Numerics.EventTimes;

/// <summary>Checks shared by everything that reads counts at visits.</summary>
internal static class VisitTimes
{
    /// <summary>Refuses visits that do not rise from 0 or later, and counts that are not finite numbers of 0 or more.</summary>
    /// <exception cref="ArgumentException">What was found, and what was expected.</exception>
    public static void Check(ReadOnlySpan<double> times, ReadOnlySpan<double> counts)
    {
        if (times.Length == 0 || times.Length != counts.Length)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found {times.Length} visits and {counts.Length} counts; expected as many of each, at least one."), nameof(counts));
        }

        for (var i = 0; i < times.Length; i++)
        {
            if (!(times[i] >= 0.0) || double.IsPositiveInfinity(times[i]) || (i > 0 && times[i] <= times[i - 1]))
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found visit {i + 1} at time {times[i]}; expected finite times of 0 or later, each after the one before."), nameof(times));
            }

            if (!(counts[i] >= 0.0) || double.IsPositiveInfinity(counts[i]))
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Found the count {counts[i]} at visit {i + 1}; expected a finite number of 0 or more."), nameof(counts));
            }
        }
    }

    /// <summary>Refuses a number of seeds sown that is not finite and above 0.</summary>
    public static void CheckSown(double? sown)
    {
        if (sown is { } seeds && (!(seeds > 0.0) || double.IsPositiveInfinity(seeds)))
        {
            throw new ArgumentOutOfRangeException(nameof(sown), seeds, "Found a number of seeds sown that is not finite and above 0; expected seeds, or null when unknown.");
        }
    }
}
