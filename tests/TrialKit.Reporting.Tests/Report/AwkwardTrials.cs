using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Report;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Tests.Report;

/// <summary>Trials that are hard to report. All numbers are invented.</summary>
internal static class AwkwardTrials
{
    private static readonly DateOnly Planted = new(2026, 4, 27);

    private static readonly Dictionary<string, Func<StripTrial>> Trials = new(StringComparer.Ordinal)
    {
        ["2 treatments, 3 pairs"] = () => Trial(2, 3),
        ["2 treatments, 60 pairs"] = () => Trial(2, 60),
        ["7 treatments, 4 blocks"] = () => Trial(7, 4),
        ["12 treatments, 3 blocks"] = () => Trial(12, 3),
        ["12 treatments without a control"] = () => Trial(12, 3, control: false),
        ["4 treatments, 60 blocks"] = () => Trial(4, 60),
        ["title and question of 200 letters"] = () => Trial(3, 4, title: Gallery.Words(200), question: Gallery.Words(200)),
        ["title of one word"] = () => Trial(2, 6, title: new string('W', 200), question: new string('m', 200)),
        ["names of 80 letters"] = () => Trial(5, 4, label: Gallery.Words(80)),
        ["names of one long word"] = () => Trial(6, 3, label: new string('W', 80)),
        ["letters the font lacks"] = () => Trial(3, 4, title: "玉米 on \U0001F33D hill", label: "鎮圧輪"),
        ["strips left out"] = () => Trial(4, 5, leftOut: true),
        ["one pair"] = () => Trial(2, 1),
        ["a treatment on one strip"] = () => Trial(4, 5, keep: (block, treatment) => treatment != 3 || block == 0),
        ["the control on one strip"] = () => Trial(4, 5, keep: (block, treatment) => treatment != 0 || block == 0),
        ["the control without a weight"] = () => Trial(4, 5, weighed: treatment => treatment != 0),
        ["a pair that lost a strip"] = () => Trial(2, 6, keep: (block, treatment) => block != 2 || treatment != 1),
        ["no spread at all"] = () => Trial(2, 6, alike: true),
        ["no plants, no visits"] = () => Trial(2, 2, bare: true),
    };

    // An analysis never changes, and some of these take a second.
    private static readonly ConcurrentDictionary<string, TrialAnalysis> Analyses = new(StringComparer.Ordinal);

    public static TheoryData<string, PageSize> Cases()
    {
        var cases = new TheoryData<string, PageSize>();
        foreach (var name in Trials.Keys)
        {
            cases.Add(name, PageSize.Letter);
            cases.Add(name, PageSize.A4);
        }

        return cases;
    }

    public static (TrialAnalysis Analysis, ReportDocument Document) Named(string name, PageSize size = PageSize.Letter)
    {
        var analysis = Analyses.GetOrAdd(name, each => TrialAnalysis.Of(Trials[each]()));
        return (analysis, TrialReport.Of(analysis, new(size, [new("strips.csv", new string('0', 64), 1)], [])));
    }

    public static ReportDocument Labelled(string label) =>
        TrialReport.Of(TrialAnalysis.Of(Trial(3, 4, title: label, question: label, label: label)), new(PageSize.Letter, [new(label, new string('0', 64), 1)], [label]));

    /// <summary>Pairs of which every strip, or only the first, has spots whose seeds nobody counted, in a trial without a seeding rate.</summary>
    public static TrialAnalysis SeedsUnknown(bool everywhere)
    {
        var trial = Trial(2, 3);
        return TrialAnalysis.Of(StripTrial.Create(new TrialDraft
        {
            Title = trial.Title,
            Crop = trial.Crop,
            Units = trial.Units,
            Planting = trial.Planting with { Seeds = null },
            Design = trial.Design,
            Heat = trial.Heat,
            Treatments = trial.Treatments,
            Strips = trial.Strips,
            Emergence = [.. trial.Emergence.Select((spot, i) => everywhere || i == 0 ? spot with { Seeds = null } : spot)],
        }));
    }

    private static StripTrial Trial(
        int treatments, int blocks, string? title = null, string? question = null, string? label = null, bool control = true, bool leftOut = false, bool bare = false,
        Func<int, int, bool>? keep = null, Func<int, bool>? weighed = null, bool alike = false)
    {
        ImmutableArray<Treatment> named =
        [
            .. Enumerable.Range(0, treatments).Select(i => new Treatment(
                FormattableString.Invariant($"t{i}"),
                label is null ? i == 0 ? "As before" : FormattableString.Invariant($"Wheel {i}") : string.Create(CultureInfo.InvariantCulture, $"{label} {i}"),
                Cost: null,
                Products: [])),
        ];
        Strip[] strips =
        [
            .. from block in Enumerable.Range(0, blocks)
               from place in Enumerable.Range(0, treatments)
               let treatment = (place + block) % treatments
               where keep is null || keep(block, treatment)
               let order = (block * treatments) + place + 1
               select new Strip(
                   FormattableString.Invariant($"S{order}"),
                   FormattableString.Invariant($"{block + 1}"),
                   named[treatment],
                   order,
                   Length.FromFeet(1200),
                   Length.FromFeet(30),
                   12,
                   Planted,
                   leftOut && order is 3 or 10 ? "the planter ran out of seed" : null,
                   Note: null),
        ];
        var corn = CropTable.Find("corn")!;
        return StripTrial.Create(new TrialDraft
        {
            Heat = new(corn.Heat, CountPlantingDay: false),
            StandCounts = [.. strips.Select((strip, i) => new StandCount(strip, "1", Planted.AddDays(40), Length.FromFeet(17.424), 1, alike ? 30 : 27 + (Noise(i, 7) % 7), PlanterRow: null))],
            Emergence = bare ? [] : [.. strips.Select((strip, i) => Spot(strip, treatments, i))],
            Plants = bare ? [] : [.. strips.SelectMany((strip, i) => Plants(strip, i))],
            Harvests = [.. strips.Select((strip, i) => new StripHarvest(strip, Mass.FromPounds(alike ? 9000 : 9000 + (10 * Noise(i, 97))), Ratio.FromPercent(18), null, null, null)).Where(harvest => weighed is null || weighed(named.IndexOf(harvest.Strip.Treatment)))],
            Weather = bare ? null : Weather(),
            Title = title ?? "Closing wheels (invented numbers)",
            Question = question ?? "Does a wheel bring corn up sooner?",
            Crop = corn,
            Units = UnitSystem.Us,
            Planting = new(Planted, Length.FromInches(30), SeedingRate.FromPerAcre(34000), Length.FromInches(2), null),
            Design = new(treatments == 2 ? Layout.Pairs : Layout.Blocks, control ? named[0] : null, ConfidenceLevel.FromAlpha(0.1)),
            Treatments = named,
            Strips = [.. strips],
        });
    }

    // A fixed spread without a pattern that treatments or blocks could share.
    private static int Noise(int seed, int below) => (int)((((uint)seed * 2654435761u) >> 8) % (uint)below);

    private static EmergenceSpot Spot(Strip strip, int treatments, int index)
    {
        var treatment = int.Parse(strip.Treatment.Name[1..], CultureInfo.InvariantCulture);
        var half = 11 - (1.5 * treatment / treatments) + (0.1 * Noise(index, 9));
        var up = 30 - Noise(index, 5);
        int[] days = [6, 8, 9, 10, 11, 12, 14, 17];
        return new(
            strip,
            "1",
            Length.FromFeet(17.424),
            34,
            [.. days.Select(day => new EmergenceVisit(Planted.AddDays(day).ToDateTime(new TimeOnly(8, 0)), (int)Math.Round(up / (1 + Math.Exp(-1.6 * (day - half))))))]);
    }

    private static IEnumerable<Plant> Plants(Strip strip, int index)
    {
        var place = 0.0;
        for (var i = 0; i < 12; i++)
        {
            place += 2 + (0.5 * Noise((index * 12) + i, 20));
            yield return new(strip, "1", FormattableString.Invariant($"{i + 1}"), Length.FromInches(place), null, null, null, null, PlantFate.Ordinary, null);
        }
    }

    private static TemperatureSeries Weather() => TemperatureSeries.Of(
        "weather.csv",
        [.. Enumerable.Range(0, 30).Select(day => new DailyTemperature(Planted.AddDays(day), Temperature.FromDegreesFahrenheit(62 + (day % 9)), Temperature.FromDegreesFahrenheit(45 + (day % 5))))]);
}
