using System.Globalization;

namespace TrialKit.Tests.Examples;

/// <summary>Invents soil temperatures at seed depth from an example's real air temperatures.</summary>
/// <remarks>
/// The soil's mean follows the air's with a lag, mean = 0.7 yesterday's + 0.3 (air mean + 1.2 C), and its daily swing is half the air's,
/// more of it above the mean than below: enough to look like soil, and no model of one.
/// </remarks>
internal static class SoilTemperatures
{
    private const double Memory = 0.7;
    private const double Warmer = 1.2;
    private const double Above = 0.30;
    private const double Below = 0.20;
    private const double Sensor = 0.15;

    /// <summary>Date, maximum and minimum of each day from ten days before planting to three weeks after the last visit.</summary>
    public static IEnumerable<(DateOnly Date, double Maximum, double Minimum)> Invent(ExamplePlan plan, Chance chance)
    {
        double? mean = null;
        foreach (var (date, high, low) in Air(plan))
        {
            var air = ((high + low) / 2) + Warmer;
            mean = mean is { } before ? (Memory * before) + ((1 - Memory) * air) : air;
            if (date >= plan.Planted.AddDays(-10) && date <= plan.Planted.AddDays(plan.VisitDays[^1] + 21))
            {
                var swing = high - low;
                yield return (date, mean.Value + (Above * swing) + chance.Normal(0, Sensor), mean.Value - (Below * swing) + chance.Normal(0, Sensor));
            }
        }
    }

    private static IEnumerable<(DateOnly Date, double High, double Low)> Air(ExamplePlan plan) =>
        File.ReadLines(Path.Combine(ExampleTrialWriter.FolderOf(plan), "weather.csv"))
            .Where(line => line[0] != '#')
            .Skip(1)
            .Select(line => line.Split(','))
            .Select(cells => (DateOnly.ParseExact(cells[0], "yyyy-MM-dd", CultureInfo.InvariantCulture), ReferenceData.Number(cells[1]), ReferenceData.Number(cells[2])));
}
