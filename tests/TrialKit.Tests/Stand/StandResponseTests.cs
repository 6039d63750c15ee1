using System.Globalization;
using CsCheck;
using TrialKit.Quantities;
using TrialKit.Stand;

namespace TrialKit.Tests.Stand;

public class StandResponseTests
{
    private const string Printed = "stand-response/nafziger-1994.csv";

    [Fact]
    public void Entries_Table_AreThoseOfThePrintedOne()
    {
        var stands = File.ReadLines(Path.Combine(ReferenceData.Root, Printed)).First(line => line.StartsWith("planted,", StringComparison.Ordinal)).Split(',')[1..];
        var printed =
            from row in ReferenceData.Csv(Printed)
            from cell in row.Skip(1).Select((percent, i) => (Percent: percent, Stand: stands[i]))
            select (row[0], ReferenceData.Number(cell.Stand), ReferenceData.Number(cell.Percent));

        Assert.Equal(printed, StandResponse.Entries.Select(entry => (entry.Planted.ToString("MM-dd", CultureInfo.InvariantCulture), Math.Round(entry.Stand.PerAcre / 1000, 9), (double)entry.Percent)));
    }

    [Fact]
    public void PercentAt_EveryEntry_IsTheEntry() =>
        Assert.All(StandResponse.Entries, entry => Assert.Equal(entry.Percent, StandResponse.PercentAt(entry.Planted.AddYears(26), entry.Stand)!.Value, Tolerances.ClosedForm));

    [Theory]
    [InlineData("too thin", 9_999, 4, 25)]
    [InlineData("too thick", 36_001, 4, 25)]
    [InlineData("too early", 30_000, 4, 9)]
    [InlineData("too late", 30_000, 5, 31)]
    public void PercentAt_OutsideTheTable_IsNothing(string situation, double stand, int month, int day) =>
        Assert.True(StandResponse.PercentAt(new(2026, month, day), PlantDensity.FromPerAcre(stand)) is null, situation);

    [Fact]
    public void PercentAt_BetweenEntries_LiesBetweenThem() =>
        Gen.Select(Gen.Double[10_000, 36_000], Gen.Int[0, 50]).Sample((stand, day) =>
            Assert.InRange(StandResponse.PercentAt(new DateOnly(2026, 4, 10).AddDays(day), PlantDensity.FromPerAcre(stand))!.Value, 49, 100));

    [Fact]
    public void PercentAt_Halfway_IsTheMean()
    {
        // 25 to 30 April, 20 to 22 thousand: 92, 94, 92, 95.
        Assert.Equal(93, StandResponse.PercentAt(new(2026, 4, 25), PlantDensity.FromPerAcre(21_000))!.Value, Tolerances.ClosedForm);
        Assert.Equal(94 + (3.0 / 5), StandResponse.PercentAt(new(2026, 4, 28), PlantDensity.FromPerAcre(22_000))!.Value, Tolerances.ClosedForm);
    }

    [Fact]
    public void KeepOrReplant_PrintedExample_KeepsTheStand()
    {
        // Purdue 2006: planted 25 April with 20,000 left is 92, replanted 25 May at 30,000 is 87.
        var comparison = new KeepOrReplant(PlantDensity.FromPerAcre(20_000), new(2006, 4, 25), PlantDensity.FromPerAcre(30_000), new(2006, 5, 25));

        Assert.Equal(92, comparison.Kept!.Value, Tolerances.ClosedForm);
        Assert.Equal(87, comparison.After!.Value, Tolerances.ClosedForm);
        Assert.Equal(-5, comparison.Gain!.Value, Tolerances.ClosedForm);
    }

    [Fact]
    public void KeepOrReplant_ReplantedBeforePlanting_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new KeepOrReplant(PlantDensity.FromPerAcre(20_000), new(2026, 4, 25), PlantDensity.FromPerAcre(30_000), new(2026, 4, 25)));

    [Fact]
    public void KeepOrReplant_ReplantedInAnotherYear_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new KeepOrReplant(PlantDensity.FromPerAcre(20_000), new(2025, 4, 25), PlantDensity.FromPerAcre(30_000), new(2026, 5, 25)));
}
