using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests;

/// <summary>Parts of a made-up corn trial: 30 in rows, 34,000 seeds/ac, planted on 1 May 2026, one strip of each of two treatments.</summary>
internal static class SmallTrial
{
    public static readonly DateOnly Planted = new(2026, 5, 1);

    public static readonly Length Rows = Length.FromInches(30);

    public static readonly Length ThousandthAcre = PlantDensity.RowOfThousandthAcre(Rows);

    public static readonly Treatment Control = new("none", "None", Cost: null, Products: []);

    public static readonly Treatment Other = new("chains", "Drag chains", Cost: null, Products: []);

    public static readonly Strip First = Strip("S1", Control, 1);

    public static readonly Strip Second = Strip("S2", Other, 2);

    public static TrialDraft Draft => new()
    {
        Title = "Small trial",
        Crop = CropTable.Find("corn")!,
        Planting = new(Planted, Rows, SeedingRate.FromPerAcre(34_000), Length.FromInches(2), Germination: null),
        Design = new(Layout.Pairs, Control, default),
        Heat = new(HeatMethods.Corn, CountPlantingDay: true),
        Treatments = [Control, Other],
        Strips = [First, Second],
    };

    public static Strip Strip(string name, Treatment treatment, int order, string? leftOut = null) =>
        new(name, "1", treatment, order, Length.FromFeet(1000), Length.FromFeet(20), Rows: 8, Planted, leftOut, Note: null);

    /// <summary>A count along a thousandth of an acre.</summary>
    public static StandCount Count(Strip strip, string? spot, int plants, DateOnly? date = null) =>
        new(strip, spot, date, ThousandthAcre, Rows: 1, plants, PlanterRow: null);

    /// <summary>A spot visited once a day, or on the days named.</summary>
    public static EmergenceSpot Spot(Strip strip, string name, int? seeds, params (double Day, int Plants)[] visits) =>
        new(strip, name, Row: null, seeds, Visits(visits));

    public static ImmutableArray<EmergenceVisit> Visits(params (double Day, int Plants)[] visits) =>
        [.. visits.Select(visit => new EmergenceVisit(Planted.ToDateTime(TimeOnly.MinValue).AddDays(visit.Day), visit.Plants))];

    public static Plant Plant(Strip strip, string spot, string name, double? inches, double? depth = null, double? mesocotyl = null, PlantFate fate = PlantFate.Ordinary) =>
        new(strip, spot, name, Inches(inches), FirstSeen: null, Collars: null, Inches(depth), Inches(mesocotyl), fate, Note: null);

    /// <summary>Days of 80/60 F, 20 F-days each.</summary>
    public static TemperatureSeries Warm(int days) => TemperatureSeries.Of("weather.csv", [.. Enumerable.Range(0, days)
        .Select(day => new DailyTemperature(Planted.AddDays(day), Temperature.FromDegreesFahrenheit(80), Temperature.FromDegreesFahrenheit(60)))]);

    private static Length? Inches(double? inches) => inches is { } given ? Length.FromInches(given) : null;
}
