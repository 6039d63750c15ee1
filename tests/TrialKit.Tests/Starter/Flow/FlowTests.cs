using CsCheck;
using TrialKit.Quantities;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using TrialKit.Tests.Numerics;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Starter.Flow;

public class FlowTests
{
    private const string Formula = "computed from the formula, no published value";
    private static readonly Length ThirtyInches = Length.FromInches(30);

    [Fact]
    public void RowFlow_Published_GivesItsGallons() =>
        Close.Absolute(0.61, RowFlow.Of(ApplicationRate.FromGallonsPerAcre(30.3), Speed.FromMilesPerHour(4), ThirtyInches).UsGallonsPerMinute, Tolerances.Printed(2), "extension: 30.3 gal/ac at 4 mph in 30 in rows");

    [Fact]
    public void RowFlow_FiveGallonsAtFiveMiles_GivesTheWorkedFlow()
    {
        var flow = RowFlow.Of(ApplicationRate.FromGallonsPerAcre(5), Speed.FromMilesPerHour(5), ThirtyInches);
        Close.Absolute(0.126263, flow.UsGallonsPerMinute, Tolerances.Printed(6), Formula);
        Close.Absolute(16.16, 128 * flow.UsGallonsPerMinute, Tolerances.Printed(2), Formula);
        Close.Absolute(477.96, flow.MillilitersPerMinute, Tolerances.Printed(2), Formula);
    }

    [Fact]
    public void RowFlow_MetricUnits_FollowTheirOwnFormula() =>
        Gen.Select(Gen.Double[1, 400], Gen.Double[2, 20], Gen.Double[0.2, 1.1]).Sample((litres, kilometres, metres) => Close.Relative(
            litres * kilometres * metres / 600,
            RowFlow.Of(ApplicationRate.FromLitresPerHectare(litres), Speed.FromKilometersPerHour(kilometres), Length.FromMeters(metres)).LitersPerMinute,
            Tolerances.FewRoundings,
            "L/ha x km/h x m / 600"));

    [Fact]
    public void RowFlow_UsUnits_FollowTheirOwnFormula() =>
        Gen.Select(Gen.Double[1, 40], Gen.Double[2, 12], Gen.Double[7, 40]).Sample((gallons, miles, inches) => Close.Relative(
            gallons * miles * inches / 5940,
            RowFlow.Of(ApplicationRate.FromGallonsPerAcre(gallons), Speed.FromMilesPerHour(miles), Length.FromInches(inches)).UsGallonsPerMinute,
            Tolerances.FewRoundings,
            "gal/ac x mph x in / 5940"));

    [Fact]
    public void ApplicationRate_OneGallonAnAcre_IsTheStatedLitres() =>
        Close.Absolute(9.354, ApplicationRate.FromGallonsPerAcre(1).PerHectare, Tolerances.Printed(3), "1 gal/ac = 9.354 L/ha");

    [Fact]
    public void OrificeLaw_QuarterMoreFlow_NeedsTheWorkedPressure()
    {
        var flow = VolumeFlow.FromUsGallonsPerMinute(0.2);
        var now = Pressure.FromPoundsForcePerSquareInch(20);
        var more = OrificeLaw.PressureFor(now, flow, VolumeFlow.FromUsGallonsPerMinute(0.25));
        Close.Absolute(31.25, more.PoundsForcePerSquareInch, Tolerances.ClosedForm, Formula);
        Close.Relative(0.25, OrificeLaw.FlowAt(flow, now, more).UsGallonsPerMinute, Tolerances.FewRoundings, "there and back");
    }

    [Fact]
    public void OrificeLaw_HalfMoreSpeed_NeedsNineQuartersOfThePressure()
    {
        var (slow, fast) = (Flow(5), Flow(7.5));
        Close.Relative(2.25, OrificeLaw.PressureFor(Pressure.FromBars(1), slow, fast).Bars, Tolerances.FewRoundings, Formula);

        static VolumeFlow Flow(double miles) => RowFlow.Of(ApplicationRate.FromGallonsPerAcre(5), Speed.FromMilesPerHour(miles), ThirtyInches);
    }

    /// <summary>Factors as printed by University of Nebraska extension.</summary>
    [Theory]
    [InlineData("28-0-0", 10.65, 1.13)]
    [InlineData("7-21-7", 11.0, 1.15)]
    [InlineData("32-0-0", 11.06, 1.15)]
    [InlineData("10-34-0", 11.4, 1.17)]
    [InlineData("11-37-0", 11.6, 1.18)]
    public void DensityCorrection_Published_GivesItsFactor(string liquid, double poundsPerGallon, double factor) =>
        Close.Absolute(factor, DensityCorrection.Factor(LiquidDensity.FromPoundsPerGallon(poundsPerGallon)), Tolerances.PrintedToTwoDecimals, liquid);

    [Fact]
    public void DensityCorrection_TwentyGallonsOfUan_NeedThePublishedWater() =>
        Close.Absolute(22.6, 20 * DensityCorrection.Factor(LiquidDensity.FromPoundsPerGallon(10.65)), Tolerances.PrintedToOneDecimal, "University of Nebraska extension");

    [Fact]
    public void FlowSplit_TwoSizes_ShareByTheirCoefficients()
    {
        var shares = FlowSplit.Of(VolumeFlow.FromUsGallonsPerMinute(0.1263), [0.04, 0.06]);
        Close.Absolute(0.05052, shares[0].UsGallonsPerMinute, Tolerances.Printed(5), Formula);
        Close.Absolute(0.07578, shares[1].UsGallonsPerMinute, Tolerances.Printed(5), Formula);
    }

    [Theory]
    [InlineData(15, 119.49)]
    [InlineData(30, 238.98)]
    [InlineData(60, 477.96)]
    public void CatchTest_WorkedFlow_FillsTheJug(double seconds, double millilitres)
    {
        var test = CatchTest.Of(RowFlow.Of(ApplicationRate.FromGallonsPerAcre(5), Speed.FromMilesPerHour(5), ThirtyInches), seconds);
        Close.Absolute(millilitres, test.Expected.Milliliters, Tolerances.PrintedToTwoDecimals, Formula);
        Close.Relative(0.95 * test.Expected.Milliliters, test.Low.Milliliters, Tolerances.FewRoundings, "5 % under");
        Close.Relative(1.05 * test.Expected.Milliliters, test.High.Milliliters, Tolerances.FewRoundings, "5 % over");
    }

    [Fact]
    public void StreamFlow_SeveralLiquidsAtOnePlacement_ListsEachAndAllTogether()
    {
        var thin = Products.Liquid("KTS", 2, 12.2, "0-0-25-17S", new PlacedShare(Placement.BesideAndBelow, 1));
        var review = Review(Products.Polyphosphate(5, new(Placement.InFurrow, 0.4), new(Placement.BesideAndBelow, 0.6)), thin);

        var flows = StreamFlow.Of(review, new(Speed.FromMilesPerHour(5), Pressure: null, []));

        Assert.Equal(["10-34-0", "10-34-0", "KTS", "10-34-0 with KTS"], flows.Select(flow => flow.Product));
        Assert.Equal([false, false, false, true], flows.Select(flow => flow.IsTotal));
        var total = flows[^1];
        Close.Relative(flows[1].PerRow.LitersPerMinute + flows[2].PerRow.LitersPerMinute, total.PerRow.LitersPerMinute, Tolerances.FewRoundings, "flows add up");
        Close.Relative(flows[1].Catches[0].Expected.Milliliters + flows[2].Catches[0].Expected.Milliliters, total.Catches[0].Expected.Milliliters, Tolerances.FewRoundings, "jugs add up");
        Close.Relative(5, total.Rate.PerAcreUs, Tolerances.FewRoundings, "3 and 2 gal/ac");
        Close.Relative(Math.Sqrt(((3 * 11.65) + (2 * 12.2)) / 5 / 8.34), total.WaterFactor!.Value, Tolerances.FewRoundings, "the mixture's density");
    }

    [Fact]
    public void StreamFlow_OutletsOfOnePlacement_LeaveTheOthersAlone()
    {
        var review = Review(Products.Polyphosphate(5, new(Placement.InFurrow, 0.4), new(Placement.BesideAndBelowBothSides, 0.6)));

        var flows = StreamFlow.Of(review, new(Speed.FromMilesPerHour(5), Pressure: null, [new(Placement.BesideAndBelowBothSides, [0.04, 0.06])]));

        Assert.Equal(flows[0].PerRow, Assert.Single(flows[0].Outlets));
        Close.Relative(0.4 * flows[1].PerRow.LitersPerMinute, flows[1].Outlets[0].LitersPerMinute, Tolerances.FewRoundings, "0.04 of 0.1");
    }

    [Fact]
    public void Flow_ImpossibleInput_Throws()
    {
        var flow = VolumeFlow.FromLitersPerMinute(1);
        Assert.Throws<ArgumentException>(() => RowFlow.Of(ApplicationRate.FromPoundsPerAcre(5), Speed.FromMilesPerHour(5), ThirtyInches));
        Assert.Throws<ArgumentOutOfRangeException>(() => RowFlow.Of(ApplicationRate.FromGallonsPerAcre(5), Speed.Zero, ThirtyInches));
        Assert.Throws<ArgumentOutOfRangeException>(() => OrificeLaw.FlowAt(flow, Pressure.Zero, Pressure.FromBars(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => DensityCorrection.Factor(Density.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => CatchTest.Of(flow, 0));
        Assert.Throws<ArgumentException>(() => FlowSplit.Of(flow, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => FlowSplit.Of(flow, [1, -1]));
    }

    private static StarterReview Review(params Product[] products) =>
        StarterReview.Of([new("t", "Treatment", Cost: null, [.. products])], new("corn", ThirtyInches, SoilClass.Medium, CationExchange: 14))!;
}
