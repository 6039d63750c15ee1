using System.Collections.Immutable;
using CsCheck;
using TrialKit.Money;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Tests.Money;

public class StripYieldsTests
{
    // Computed from the formula, no published value; corn is stated to two decimals, the others to three.
    [Theory]
    [InlineData("corn", 5000, 18, 1000, 20, 188.71, 2)]
    [InlineData("soybean", 2000, 11, 800, 30, 61.891, 3)]
    [InlineData("wheat", 1650, 12, 600, 30, 67.704, 3)]
    public void Of_WeighedStrip_AgreesWithFormula(string crop, double pounds, double moisture, double length, double width, double expected, int decimals)
    {
        var harvest = Harvest(pounds, moisture) with { Length = Length.FromFeet(length), Width = Length.FromFeet(width) };

        var yield = Assert.Single(Of(crop, harvest));

        Assert.Equal(expected, yield.In(UnitSystem.Us)!.Value, decimals == 2 ? Tolerances.PrintedToTwoDecimals : Tolerances.PrintedToThreeDecimals);
        Assert.Empty(yield.Findings);
    }

    // Printed in extension tables: pounds at harvest moisture that hold the dry matter of one standard bushel.
    [Theory]
    [InlineData("corn", 59.15, 20)]
    [InlineData("soybean", 61.41, 15)]
    [InlineData("soybean", 58.00, 10)]
    public void Of_PoundsOfOneStandardBushel_IsOneBushel(string crop, double pounds, double moisture)
    {
        var acre = Harvest(pounds, moisture) with { Length = Length.FromFeet(43_560), Width = Length.FromFeet(1) };

        Assert.Equal(1, Assert.Single(Of(crop, acre)).In(UnitSystem.Us)!.Value, Tolerances.PrintedPoundsToABushel);
    }

    [Fact]
    public void Of_SidesOfTheHarvestMissing_TakesTheStripsOwn() =>
        Assert.Equal(188.71, Assert.Single(Of("corn", Harvest(5000, 18))).In(UnitSystem.Us)!.Value, Tolerances.PrintedToTwoDecimals);

    [Fact]
    public void Of_NoArea_HasNoYieldAndSaysSo()
    {
        var strip = SmallTrial.First with { Length = null };
        var draft = SmallTrial.Draft with { Strips = [strip, SmallTrial.Second], Harvests = [Harvest(5000, 18) with { Strip = strip }] };

        var yield = Assert.Single(StripYields.Of(StripTrial.Create(draft)));

        Assert.Null(yield.Yield);
        Assert.Null(yield.In(UnitSystem.Us));
        Assert.Equal(["yield-no-area"], yield.Findings.Select(finding => finding.Id));
    }

    [Fact]
    public void Of_CropWithoutStandard_HasNoYieldAndSaysSo()
    {
        var yield = Assert.Single(Of("canola", Harvest(5000, 10)));

        Assert.Null(yield.Yield);
        Assert.Equal(["yield-no-standard-moisture"], yield.Findings.Select(finding => finding.Id));
    }

    [Fact]
    public void In_CropWithoutBushel_IsNullInBushelsOnly()
    {
        var crop = CropTable.Find("canola")! with { StandardMoisture = Ratio.FromPercent(9) };
        var draft = SmallTrial.Draft with { Crop = crop, Harvests = [Harvest(5000, 9)] };

        var yield = Assert.Single(StripYields.Of(StripTrial.Create(draft)));

        Assert.Null(yield.In(UnitSystem.Us));
        Assert.Equal(Mass.FromPounds(5000).Tonnes / (1000 * 20 / 43_560.0 * Land.HectaresPerAcre), yield.In(UnitSystem.Metric)!.Value, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_OtherUnits_ChangesNothing() =>
        Gen.Select(Gen.Double[1e-3, 2], Gen.Double[0, 60], Gen.Double[1, 5000], Gen.Double[1, 100]).Sample((poundsPerSquareFoot, moisture, length, width) =>
        {
            var us = Harvest(poundsPerSquareFoot * length * width, moisture) with { Length = Length.FromFeet(length), Width = Length.FromFeet(width) };
            var metric = us with
            {
                Weight = Mass.FromKilograms(us.Weight.Kilograms),
                Length = Length.FromMeters(us.Length!.Value.Meters),
                Width = Length.FromMeters(us.Width!.Value.Meters),
            };
            var one = Assert.Single(Of("corn", us)).Yield!.Value.KilogramsPerHectare;
            var other = Assert.Single(Of("corn", metric)).Yield!.Value.KilogramsPerHectare;

            Assert.Equal(1, other / one, Tolerances.ClosedForm);
        });

    private static ImmutableArray<StripYield> Of(string crop, StripHarvest harvest) =>
        StripYields.Of(StripTrial.Create(SmallTrial.Draft with { Crop = CropTable.Find(crop)!, Harvests = [harvest] }));

    private static StripHarvest Harvest(double pounds, double moisture) =>
        new(SmallTrial.First, Mass.FromPounds(pounds), Ratio.FromPercent(moisture), Length: null, Width: null, TestWeight: null);
}
