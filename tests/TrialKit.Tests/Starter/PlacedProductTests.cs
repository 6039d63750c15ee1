using CsCheck;
using TrialKit.Quantities;
using TrialKit.Starter;
using TrialKit.Tests.Numerics;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Starter;

public class PlacedProductTests
{
    private const string Formula = "computed from the formula, no published value";

    [Fact]
    public void Of_FiveGallonsOfPolyphosphate_GivesTheWorkedAmounts()
    {
        var placed = Assert.Single(PlacedProduct.Of(Products.Polyphosphate(5), Products.ThirtyInches));
        var nutrients = placed.Nutrients!.Value;

        Close.Absolute(58.25, placed.Weight!.Value.PerAcreUs, Tolerances.Printed(2), Formula);
        Close.Absolute(5.825, nutrients[0].Rate.PerAcreUs, Tolerances.Printed(3), Formula);
        Close.Absolute(19.805, nutrients[1].Rate.PerAcreUs, Tolerances.Printed(3), Formula);
        Close.Absolute(0.28696, placed.Row.PerThousandFeetUs, Tolerances.Printed(5), Formula);
        Close.Absolute(36.73, placed.Row.FluidOuncesPerThousandFeet!.Value, Tolerances.Printed(2), Formula);
        Close.Absolute(1.0863, placed.Row.ThousandthsPerFoot, Tolerances.Printed(4), Formula);
        Close.Absolute(0.33431, nutrients[0].Row.PerThousandFeetUs, Tolerances.Printed(5), Formula);
        Close.Absolute(0.4975, nutrients[0].Row.ThousandthsPerMetre, Tolerances.Printed(4), Formula);
    }

    [Fact]
    public void Of_TenGallonsOfUan_GivesItsNitrogen() =>
        Close.Absolute(29.85, Nitrogen(Products.Liquid("UAN-28", 10, 10.66, "28-0-0")), Tolerances.Printed(2), Formula);

    [Fact]
    public void Of_PublishedTenGallonsOf7217_GivesNitrogenAndPotash()
    {
        var total = Assert.Single(PlacementTotal.Of([Products.Liquid("7-21-7", 10, 11, "7-21-7")], Products.ThirtyInches));
        Close.Absolute(15.4, total.PoundsPerAcre(Nutrient.N, Nutrient.K2O)!.Value, Tolerances.Printed(1), "extension table");
    }

    [Fact]
    public void Of_SeventyFivePoundsOfNitrogen_NeedsThePublishedGallons() =>
        Close.Absolute(75, Nitrogen(Products.Liquid("UAN-28", 25.15, 10.65, "28-0-0")), Tolerances.PrintedToTwoDecimals * 10.65 * 0.28, "University of Nebraska extension: 25.15 gal");

    [Fact]
    public void Of_SplitPlacement_WeighsEachPlacementByItsShare()
    {
        var placed = PlacedProduct.Of(Products.Polyphosphate(15, new(Placement.InFurrow, 1.0 / 3), new(Placement.BesideAndBelowBothSides, 2.0 / 3)), Products.ThirtyInches);
        var band = placed[1].Nutrients!.Value[0].Rate.PerAcreUs;

        Close.Absolute(5.825, placed[0].Nutrients!.Value[0].Rate.PerAcreUs, Tolerances.Printed(3), Formula);
        Close.Absolute(11.65, band, Tolerances.Printed(3), Formula);
        Close.Absolute(5.825, band / Placements.OutletsPerRow(placed[1].Placement), Tolerances.Printed(3), "a side; " + Formula);
    }

    [Theory]
    [InlineData(15, 0.2296)]
    [InlineData(20, 0.3061)]
    [InlineData(30, 0.4591)]
    [InlineData(36, 0.5510)]
    [InlineData(38, 0.5816)]
    [InlineData(40, 0.6122)]
    public void RowAmount_EightPoundsAnAcre_GrowsWithTheRow(double inches, double pounds) =>
        Close.Absolute(pounds, RowAmount.Of(ApplicationRate.FromPoundsPerAcre(8), Length.FromInches(inches)).PerThousandFeetUs, Tolerances.Printed(4), Formula);

    [Fact]
    public void Nutrients_WithoutAnalysisOrDensity_AreNotKnown()
    {
        var product = Products.Polyphosphate(5);
        Assert.Null(PlacedProduct.Of(product with { Analysis = null }, Products.ThirtyInches)[0].Nutrients);
        Assert.Null(PlacedProduct.Of(product with { Density = null }, Products.ThirtyInches)[0].Weight);
        Assert.Null(PlacementTotal.Of([product, product with { Density = null }], Products.ThirtyInches)[0].PoundsPerAcre(Nutrient.N));
    }

    [Fact]
    public void Nutrients_Micronutrients_AreWeighedToo()
    {
        var nutrients = PlacedProduct.Of(Products.Dry("starter", 100, "9-18-9-0.5Zn-0.02B"), Products.ThirtyInches)[0].Nutrients!.Value;
        Close.Absolute(0.5, nutrients.Single(amount => amount.Nutrient == Nutrient.Zn).Rate.PerAcreUs, Tolerances.FewRoundings, "a half percent of 100 lb");
        Close.Absolute(0.02, nutrients.Single(amount => amount.Nutrient == Nutrient.B).Rate.PerAcreUs, Tolerances.FewRoundings, "a fiftieth percent of 100 lb");
    }

    [Fact]
    public void Rates_ThereAndBackBetweenUnitSystems_AreTheSame() =>
        Gen.Double[1e-3, 1e4].Sample(amount =>
        {
            Close.Relative(amount, ApplicationRate.FromLitresPerHectare(ApplicationRate.FromGallonsPerAcre(amount).PerHectare).PerAcreUs, Tolerances.UnitRoundTrip, "gal/ac");
            Close.Relative(amount, ApplicationRate.FromKilogramsPerHectare(ApplicationRate.FromPoundsPerAcre(amount).PerHectare).PerAcreUs, Tolerances.UnitRoundTrip, "lb/ac");
            Close.Relative(amount, RowAmount.FromPoundsPerThousandFeet(RowAmount.FromPoundsPerThousandFeet(amount).PerThousandFeetUs).PerThousandFeetUs, Tolerances.UnitRoundTrip, "lb/1000 ft");
            Close.Relative(amount, RowAmount.FromGallonsPerThousandFeet(amount).PerThousandFeetUs, Tolerances.UnitRoundTrip, "gal/1000 ft");
            Close.Relative(amount, LiquidDensity.PoundsPerGallon(Density.FromKilogramsPerLiter(LiquidDensity.FromPoundsPerGallon(amount).KilogramsPerLiter)), Tolerances.UnitRoundTrip, "lb/gal");
            Close.Relative(amount, VolumeFlow.FromLitersPerMinute(VolumeFlow.FromUsGallonsPerMinute(amount).LitersPerMinute).UsGallonsPerMinute, Tolerances.UnitRoundTrip, "gal/min");
            Close.Relative(amount, Speed.FromKilometersPerHour(Speed.FromMilesPerHour(amount).KilometersPerHour).MilesPerHour, Tolerances.UnitRoundTrip, "mph");
            Close.Relative(amount, MoneyPerArea.FromPerHectare(MoneyPerArea.FromPerAcre(amount, "$").PerHectare, "$").PerAcre, Tolerances.UnitRoundTrip, "$/ac");
        });

    [Fact]
    public void RowAmount_TwiceTheSpacing_IsTwiceAsMuch() =>
        Gen.Select(Gen.Double[0.1, 500], Gen.Double[5, 60]).Sample((pounds, inches) =>
        {
            var rate = ApplicationRate.FromPoundsPerAcre(pounds);
            Close.Relative(2 * RowAmount.Of(rate, Length.FromInches(inches)).PerMetre, RowAmount.Of(rate, Length.FromInches(2 * inches)).PerMetre, Tolerances.FewRoundings, "row spacing");
        });

    [Fact]
    public void Placements_AnyShares_AddUpToTheWhole() =>
        Gen.Double[0.01, 0.99].Sample(share =>
        {
            var placed = PlacedProduct.Of(Products.Polyphosphate(7, new(Placement.InFurrow, share), new(Placement.BesideAndBelow, 1 - share)), Products.ThirtyInches);
            Close.Relative(7 * 11.65, placed.Sum(part => part.Weight!.Value.PerAcreUs), Tolerances.FewRoundings, "weights");
        });

    [Fact]
    public void Amounts_ImpossibleInput_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RowAmount.Of(ApplicationRate.FromPoundsPerAcre(1), Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => RowAmount.FromPoundsPerThousandFeet(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => ApplicationRate.FromGallonsPerAcre(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ApplicationRate.FromGallonsPerAcre(1).Times(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => ApplicationRate.FromGallonsPerAcre(1).Weighed(Density.Zero));
    }

    private static double Nitrogen(Product product) => PlacedProduct.Of(product, Products.ThirtyInches)[0].Nutrients!.Value[0].Rate.PerAcreUs;
}
