using System.Globalization;
using TrialKit.Heat;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Report;

/// <summary>The heat from planting to the last visit, with when half the plants were up.</summary>
internal static class HeatPart
{
    private const double Height = 172;

    // A curve needs two points.
    private const int FewestDays = 2;

    private const int DaysWithoutVisits = 40;

    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        if (analysis.Heat is not { Clock: { Days.IsEmpty: false } clock } heat)
        {
            yield break;
        }

        var last = analysis.Strips.Emergence.IsEmpty ? DaysWithoutVisits : (int)Math.Ceiling(analysis.Strips.Emergence.Max(strip => strip.LastVisit));
        var units = analysis.Trial.Units;
        var unit = units == UnitSystem.Us ? "F-days" : "C-days";
        var end = clock.Planted.AddDays(last);
        var filledDays = (analysis.Trial.SoilTemperature ?? analysis.Trial.Weather)!.Filled.ToHashSet();
        HeatDay[] days = [.. clock.Days.Where(day => day.Date <= end).Select(day => new HeatDay(day.Date, day.Heat.In(units), filledDays.Contains(day.Date) ? DayKind.Filled : DayKind.Observed))];
        if (days.Length < FewestDays)
        {
            yield break;
        }

        var half = Half(analysis).ToArray();
        var total = days.Sum(day => day.Heat!.Value);
        var words = $"From {NumberText.Date(days[0].Date)} to {NumberText.Date(days[^1].Date)} {NumberText.Number(total, 0)} {unit} gathered. {string.Join(" ", half.Select(each => $"{char.ToUpperInvariant(each.Text[0])}{each.Text[1..]} on {NumberText.ShortDate(each.Date)}."))}";
        yield return new Heading(2, "Heat");
        yield return new FigureBlock(
            new HeatFigure(unit, days, half, words.TrimEnd()),
            "Heat from planting to the last visit",
            Height,
            Note: HeatWords.Method(heat) + (days.Count(day => day.Kind == DayKind.Filled) is > 0 and var filled ? string.Create(CultureInfo.InvariantCulture, $" {filled} of {days.Length} days are filled by interpolation.") : ""))
        {
            Name = "heat",
        };
    }

    // With more than a few treatments only the first and the last to come up are named.
    private static IEnumerable<HeatEvent> Half(TrialAnalysis analysis)
    {
        var means = analysis.Measures.FirstOrDefault(measure => measure.Measure.Id == "t50")?.Means ?? [];
        var inOrder = means.OrderBy(mean => mean.Mean).ToArray();
        foreach (var mean in inOrder.Length > 3 ? [inOrder[0], inOrder[^1]] : inOrder)
        {
            yield return new(analysis.Trial.Planting.Date.AddDays((int)mean.Mean), $"half up: {mean.Treatment.Label}");
        }
    }
}
