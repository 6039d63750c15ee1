using System.Globalization;

namespace TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

internal static class DegreeDaysDerivation
{
    public static IEnumerable<Derived> Of(SheetText sheet, Hand hand)
    {
        const string days = "The days after planting";
        var (highest, lowest) = (sheet.Column(days, 1), sheet.Column(days, 2));
        var means = highest.Zip(lowest, (high, low) => hand.Round((high + low) / 2, 2)).ToArray();
        var average = means.Select(mean => Math.Max(0, mean - 50)).ToArray();
        var clipped = highest.Zip(lowest, (high, low) => hand.Round((Math.Clamp(high, 50, 86) + Math.Clamp(low, 50, 86)) / 2, 2) - 50).ToArray();
        var triangle = highest.Zip(lowest, (high, low) => Triangle(high, low, hand)).ToArray();
        for (var i = 0; i < means.Length; i++)
        {
            yield return Derived.Of($"average{i + 1}", average[i]);
            yield return Derived.Of($"clipped{i + 1}", clipped[i]);
            yield return Derived.Of($"wrong{i + 1}", Math.Clamp(means[i], 50, 86) - 50);
        }

        foreach (var day in Asked(sheet, means.Length))
        {
            yield return Derived.Of($"triangle{day}", triangle[day - 1]);
        }

        yield return Derived.Of("average", average.Sum());
        yield return Derived.Of("clipped", clipped.Sum());
        yield return Derived.Of("excess", clipped.Sum() - average.Sum());
        if (sheet.IsSecond)
        {
            var need = sheet.Find("needs ([0-9,]+) degree-days")[0];
            yield return Derived.Of("triangle", triangle.Sum());
            yield return Derived.Of("met-average", Met(average, need));
            yield return Derived.Of("met-clipped", Met(clipped, need));
            yield return Derived.Of("met-triangle", Met(triangle, need));
        }
    }

    private static decimal Triangle(decimal high, decimal low, Hand hand)
    {
        var area = low >= 50 ? hand.Round((high + low) / 2, 2) - 50 : high <= 50 ? 0 : hand.Round((high - 50) * (high - 50) / (2 * (high - low)), 2);
        return high > 86 ? area - hand.Round((high - 86) * (high - 86) / (2 * (high - low)), 2) : area;
    }

    private static IEnumerable<int> Asked(SheetText sheet, int days)
    {
        const string some = "by the triangle, for days ([0-9]+) and ([0-9]+)";
        return sheet.IsSecond ? Enumerable.Range(1, days) : sheet.Find(some).Select(day => (int)day);
    }

    private static string Met(decimal[] days, decimal need)
    {
        var sum = 0m;
        for (var i = 0; i < days.Length; i++)
        {
            sum += days[i];
            if (sum >= need)
            {
                return (i + 1).ToString(CultureInfo.InvariantCulture);
            }
        }

        return "not met";
    }
}
