namespace TrialKit.Reporting.Figures;

/// <summary>The range of an axis that holds some values with a little room around them.</summary>
internal static class AxisRange
{
    private const double Room = 0.07;

    /// <summary>The range; values that are all the same get a range around them.</summary>
    public static (double Low, double High) Around(IEnumerable<double> values)
    {
        var list = values.ToList();
        var (low, high) = (list.Min(), list.Max());
        var span = high > low ? high - low : Math.Max(Math.Abs(high), 1);
        return (low - (Room * span), high + (Room * span));
    }
}
