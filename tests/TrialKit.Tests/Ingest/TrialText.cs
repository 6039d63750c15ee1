using System.Globalization;
using System.Text;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Ingest;

/// <summary>Everything a trial holds as text in SI units, so that two trials can be compared.</summary>
internal static class TrialText
{
    public static string Of(StripTrial trial)
    {
        var text = new StringBuilder();
        Line(text, "trial", trial.Title, trial.Question, trial.Crop.Name, trial.Units, trial.Site?.Name, trial.Site?.Latitude, trial.Site?.Longitude, trial.Heat.Method.Name, trial.Heat.CountPlantingDay, trial.GrainPrice);
        Line(text, "planting", trial.Planting.Date, Metres(trial.Planting.RowSpacing), trial.Planting.Seeds, Metres(trial.Planting.Depth), trial.Planting.Germination?.DecimalFractions);
        Line(text, "design", trial.Design.Layout, trial.Design.Control?.Name, trial.Design.Level.Alpha);
        foreach (var treatment in trial.Treatments)
        {
            Line(text, "treatment", treatment.Name, treatment.Label, treatment.Cost, treatment.Products.Length);
        }

        foreach (var strip in trial.Strips)
        {
            Line(text, "strip", strip.Name, strip.Block, strip.Treatment.Name, strip.Order, Metres(strip.Length), Metres(strip.Width), strip.Rows, strip.Planted, strip.LeftOut, strip.Note);
        }

        foreach (var count in trial.StandCounts)
        {
            Line(text, "count", count.Strip.Name, count.Spot, count.Date, Metres(count.Row), count.Rows, count.Plants, count.PlanterRow);
        }

        foreach (var spot in trial.Emergence)
        {
            Line(text, "spot", spot.Strip.Name, spot.Spot, Metres(spot.Row), spot.Seeds, string.Join(' ', spot.Visits.Select(visit => $"{visit.At:s}={visit.Plants}")));
        }

        foreach (var plant in trial.Plants)
        {
            Line(text, "plant", plant.Strip.Name, plant.Spot, plant.Name, Metres(plant.Position), plant.FirstSeen?.ToString("s", CultureInfo.InvariantCulture), plant.Collars, Metres(plant.Depth), Metres(plant.Mesocotyl), plant.Fate, plant.Note);
        }

        foreach (var harvest in trial.Harvests)
        {
            Line(text, "harvest", harvest.Strip.Name, harvest.Weight.Kilograms, harvest.Moisture.DecimalFractions, Metres(harvest.Length), Metres(harvest.Width), harvest.TestWeight?.KilogramsPerLiter);
        }

        foreach (var value in trial.Measurements)
        {
            Line(text, "measure", value.Strip.Name, value.Spot, value.Measure, value.Value, value.Unit);
        }

        foreach (var day in (trial.Weather?.Days ?? []).Concat(trial.SoilTemperature?.Days ?? []))
        {
            Line(text, "day", day.Date, day.Maximum.DegreesCelsius, day.Minimum.DegreesCelsius);
        }

        return text.ToString();
    }

    private static double? Metres(Length? length) => length?.Meters;

    private static void Line(StringBuilder text, params object?[] parts) =>
        text.AppendJoin('|', parts.Select(part => Convert.ToString(part, CultureInfo.InvariantCulture))).Append('\n');
}
