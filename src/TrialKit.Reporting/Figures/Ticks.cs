namespace TrialKit.Reporting.Figures;

/// <summary>Round numbers for an axis.</summary>
internal static class Ticks
{
    /// <summary>Steps of 1, 2, 2.5 or 5 times a power of ten that cut a range into about so many parts.</summary>
    /// <param name="low">Lower end of the range.</param>
    /// <param name="high">Upper end, above the lower.</param>
    /// <param name="parts">About how many parts, 1 or more.</param>
    /// <returns>The multiples of the step that lie in the range, and the decimals that write them.</returns>
    public static (IReadOnlyList<double> Values, int Decimals) Round(double low, double high, int parts)
    {
        if (!(high > low))
        {
            throw new ArgumentException(FormattableString.Invariant($"An axis runs from less to more; found {low} to {high}."), nameof(high));
        }

        var rough = (high - low) / parts;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var factor = new[] { 1, 2, 2.5, 5, 10 }.First(each => each * power >= rough * (1 - 1e-9));
        var step = factor * power;
        var decimals = Math.Max(0, (int)-Math.Floor(Math.Log10(power)) + (factor == 2.5 ? 1 : 0) - (factor == 10 ? 1 : 0));
        var first = (long)Math.Ceiling((low / step) - 1e-9);
        var last = (long)Math.Floor((high / step) + 1e-9);
        return ([.. Enumerable.Range(0, (int)(last - first + 1)).Select(i => Math.Round((first + i) * step, Math.Min(15, decimals)))], decimals);
    }

    /// <summary>A whole step, 1, 2, 5, 7, 10, 14 or 28 days, that cuts a span into no more than so many parts.</summary>
    /// <param name="days">The span in days.</param>
    /// <param name="parts">The most parts.</param>
    public static int DayStep(double days, int parts)
    {
        int[] steps = [1, 2, 5, 7, 10, 14, 28];
        return steps.FirstOrDefault(step => days / step <= parts, (int)Math.Ceiling(days / parts));
    }
}
