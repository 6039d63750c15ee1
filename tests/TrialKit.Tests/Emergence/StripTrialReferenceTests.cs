using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Emergence;
using TrialKit.Money;
using TrialKit.Stand;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Tests.Emergence;

/// <summary>Every strip value of a made-up trial against a script in R (generators/strip-trial.R).</summary>
public class StripTrialReferenceTests
{
    private static readonly DateOnly Planted = new(2012, 5, 1);

    private static readonly StripTrial Trial = Read();

    public static TheoryData<string> Strips => [.. Trial.Strips.Select(strip => strip.Name)];

    [Theory]
    [MemberData(nameof(Strips))]
    public void EmergenceTiming_Strip_AgreesWithR(string name)
    {
        var expected = Expected(name);
        var strip = EmergenceTiming.Of(Trial).Single(strip => strip.Strip.Name == name);

        Agree("final", strip.FinalPercent, expected, Tolerances.ClosedForm);
        Agree("loglik", strip.Fit.LogLikelihood, expected, Tolerances.ClosedForm);
        Agree("d", strip.Fit.Share?.Value, expected, Tolerances.OtherSearch);
        Agree("b", strip.Fit.Steepness?.Value, expected, Tolerances.OtherSearch);
        Agree("e", strip.Fit.Location?.Value, expected, Tolerances.OtherSearch);
        Agree("se_d", strip.Fit.Share?.StandardError, expected, Tolerances.DifferencedError);
        Agree("se_b", strip.Fit.Steepness?.StandardError, expected, Tolerances.DifferencedError);
        Agree("se_e", strip.Fit.Location?.StandardError, expected, Tolerances.DifferencedError);
        Agree("t10", strip.T10?.Days, expected, Tolerances.OtherSearch);
        Agree("t50", strip.T50?.Days, expected, Tolerances.OtherSearch);
        Agree("t90", strip.T90?.Days, expected, Tolerances.OtherSearch);
        Agree("spread", strip.Spread?.Days, expected, Tolerances.OtherSearch);
        Agree("se_spread", strip.Spread?.StandardError, expected, Tolerances.DifferencedError);
        Agree("heat_t50", strip.T50?.Heat?.FahrenheitDays, expected, Tolerances.OtherSearch);
        Agree("average_heat_t50", strip.T50?.AverageHeat?.FahrenheitDays, expected, Tolerances.OtherSearch);
        Agree("heat_spread", strip.Spread?.Heat?.FahrenheitDays, expected, Tolerances.OtherSearch);
    }

    [Theory]
    [MemberData(nameof(Strips))]
    public void StandCounts_Strip_AgreesWithR(string name)
    {
        var expected = Expected(name);
        var strip = StandCounts.Of(Trial).Single(strip => strip.Strip.Name == name);

        Agree("stand", strip.Mean.PerAcre, expected, Tolerances.ClosedForm);
        Agree("sd_stand", strip.StandardDeviation?.PerAcre, expected, Tolerances.ClosedForm);
    }

    [Theory]
    [MemberData(nameof(Strips))]
    public void InRowSpacing_Strip_AgreesWithR(string name)
    {
        var expected = Expected(name);
        var strip = InRowSpacing.Of(Trial).Single(strip => strip.Strip.Name == name);

        Agree("gaps", strip.Gaps, expected, Tolerances.ClosedForm);
        Agree("spacing", strip.Mean?.Inches, expected, Tolerances.ClosedForm);
        Agree("sd_spacing", strip.StandardDeviation?.Inches, expected, Tolerances.ClosedForm);
        Agree("multiples", strip.Classes?.Multiples, expected, Tolerances.ClosedForm);
        Agree("singles", strip.Classes?.Singles, expected, Tolerances.ClosedForm);
        Agree("missed", strip.Classes?.Missed, expected, Tolerances.ClosedForm);
        Agree("precision", strip.Precision, expected, Tolerances.ClosedForm);
    }

    [Theory]
    [MemberData(nameof(Strips))]
    public void StripYields_Strip_AgreesWithR(string name) =>
        Agree("yield", StripYields.Of(Trial).Single(strip => strip.Strip.Name == name).In(UnitSystem.Us), Expected(name), Tolerances.ClosedForm);

    private static void Agree(string column, double? value, Dictionary<string, double> expected, double tolerance) =>
        Assert.True(
            Math.Abs(value!.Value - expected[column]) <= tolerance * Math.Abs(expected[column]),
            string.Create(CultureInfo.InvariantCulture, $"{column}: {value} for {expected[column]} of strip-trial/expected.csv (R)"));

    private static Dictionary<string, double> Expected(string strip) =>
        Table("expected").Single(row => row["strip"] == strip)
            .Where(cell => cell.Key != "strip")
            .ToDictionary(cell => cell.Key, cell => ReferenceData.Number(cell.Value), StringComparer.Ordinal);

    private static ImmutableArray<Dictionary<string, string>> Table(string name)
    {
        var lines = File.ReadLines(Path.Combine(ReferenceData.Root, "strip-trial", $"{name}.csv")).Where(line => line[0] != '#').ToArray();
        var heads = lines[0].Split(',');
        return [.. lines.Skip(1).Select(line => heads.Zip(line.Split(',')).ToDictionary(cell => cell.First, cell => cell.Second, StringComparer.Ordinal))];
    }

    private static StripTrial Read()
    {
        var treatments = new[] { SmallTrial.Control, SmallTrial.Other };
        var strips = Table("strips").ToDictionary(
            row => row["strip"],
            row => new Strip(
                row["strip"],
                row["block"],
                treatments.Single(treatment => treatment.Name == row["treatment"]),
                (int)ReferenceData.Number(row["order"]),
                Length.FromFeet(ReferenceData.Number(row["length_ft"])),
                Length.FromFeet(ReferenceData.Number(row["width_ft"])),
                Rows: null,
                Planted,
                LeftOut: null,
                Note: null),
            StringComparer.Ordinal);
        return StripTrial.Create(SmallTrial.Draft with
        {
            Planting = SmallTrial.Draft.Planting with { Date = Planted },
            Strips = [.. strips.Values],
            StandCounts = [.. Table("stand-counts").Select(row => new StandCount(
                strips[row["strip"]], row["spot"], Date: null, Length.FromFeet(ReferenceData.Number(row["length_ft"])), Rows: 1, (int)ReferenceData.Number(row["plants"]), PlanterRow: null))],
            Emergence = [.. Table("emergence").GroupBy(row => (Strip: row["strip"], Spot: row["spot"])).Select(spot => new EmergenceSpot(
                strips[spot.Key.Strip],
                spot.Key.Spot,
                1.2 * SmallTrial.ThousandthAcre,
                Seeds: null,
                [.. spot.Select(row => new EmergenceVisit(Planted.ToDateTime(TimeOnly.MinValue).AddDays(ReferenceData.Number(row["day"])), (int)ReferenceData.Number(row["plants"])))]))],
            Plants = [.. Table("plants").Select(row => SmallTrial.Plant(strips[row["strip"]], row["spot"], row["plant"], ReferenceData.Number(row["position_in"])))],
            Harvests = [.. Table("harvest").Select(row => new StripHarvest(
                strips[row["strip"]], Mass.FromPounds(ReferenceData.Number(row["weight_lb"])), Ratio.FromPercent(ReferenceData.Number(row["moisture_pct"])), Length: null, Width: null, TestWeight: null))],
            Weather = TemperatureSeries.Of("seattle-2012-05.csv", [.. ReferenceData.Csv("weather/seattle-2012-05.csv").Select(row => new DailyTemperature(
                DateOnly.Parse(row[0], CultureInfo.InvariantCulture),
                Temperature.FromDegreesCelsius(ReferenceData.Number(row[1])),
                Temperature.FromDegreesCelsius(ReferenceData.Number(row[2]))))]),
        });
    }
}
