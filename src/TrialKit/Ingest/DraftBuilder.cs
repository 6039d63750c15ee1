using TrialKit.Ingest.Records;
using TrialKit.Ingest.Settings;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest;

/// <summary>Puts what was read together.</summary>
internal static class DraftBuilder
{
    // What stands in for a part that is missing or faulty, so that the rules can still be held against the rest: an error has been reported
    // for each of these parts, and the draft becomes no trial.
    private static readonly Crop NoCrop = new("none", Bushel: null, StandardMoisture: null, HeatMethods.Average50, "none");

    /// <summary>The draft of a trial; whole when no error was found.</summary>
    public static TrialDraft Build(TrialSettings settings, TrialTables tables)
    {
        var crop = settings.Crop ?? NoCrop;
        var knowsPlanting = settings.PlantingDate is not null;
        return new TrialDraft
        {
            Title = settings.Title ?? string.Empty,
            Question = settings.Question,
            Crop = crop,
            Units = settings.Units,
            Site = settings.Site,
            Planting = new Planting(
                settings.PlantingDate ?? DateOnly.MinValue,
                settings.RowSpacing ?? Length.FromMeters(1),
                settings.RowSpacing is null ? null : settings.Seeds,
                settings.Depth,
                settings.Germination)
            {
                Speed = settings.Speed,
            },
            Design = Design(settings),
            Heat = new HeatSettings(settings.Heat ?? crop.Heat, settings.CountPlantingDay),
            Forecast = settings.Forecast.With(settings.Depth, settings.WeatherChoices.Fill, tables.Forecast.Series, tables.Normals.Series),
            GrainPrice = settings.GrainPrice,
            Money = settings.Money,
            Treatments = settings.Treatments,
            Strips = tables.Strips.Items,
            StandCounts = tables.StandCounts.Items,
            Emergence = tables.Emergence.Spots.Items,
            Plants = tables.Plants.Items,
            Harvests = tables.Harvests.Items,
            Measurements = tables.Measurements.Items,
            Field = settings.Field,
            PlannedSpots = tables.Spots.Items,
            PlanSeed = settings.PlanSeed,
            PlanId = settings.PlanId,
            Weather = knowsPlanting ? tables.Weather.Series : null,
            SoilTemperature = knowsPlanting ? tables.SoilTemperature.Series : null,
        };
    }

    /// <summary>The design; a layout or control that is named and faulty breaks no rule a second time.</summary>
    private static Design Design(TrialSettings settings)
    {
        var controlFaulty = settings.NamesControl && settings.Control is null;
        var layout = settings.Layout is { } known && !controlFaulty ? known : Layout.Blocks;
        return new Design(layout, settings.Control, settings.Level) { Margins = settings.Margins, Curve = settings.Curve };
    }
}
