using TrialKit.Starter;
using TrialKit.Tests.Numerics;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Starter;

public class FurrowScreenTests
{
    private static readonly StarterSite Medium = new("corn", Products.ThirtyInches, SoilClass.Medium, CationExchange: 14);

    [Theory]
    [InlineData("10-34-0 with UAN", "14-20-0")]
    [InlineData("10-34-0+UAN28", "14-20-0")]
    [InlineData("ammonium polyphosphate and ATS", "11-20-0-10S")]
    [InlineData("UAN", "32-0-0")]
    [InlineData("UAN-30", "30-0-0")]
    [InlineData("urea ammonium nitrate", "30-0-0")]
    [InlineData("urea ammonium nitrate", "28-0-0")]
    [InlineData("potassium thiosulphate", "0-0-25-17S")]
    public void Of_MaterialNeverInTheFurrow_IsFoundInAnyNameAndNeverToldAsWithinALimit(string name, string analysis)
    {
        var product = Products.Liquid(name, 0.5, 11, analysis);

        Assert.Contains(FurrowHazards.In(product), hazard => hazard.IsNever);
        Assert.All(FurrowScreen.Of(PlacementTotal.Of([product], Products.ThirtyInches).Single(), Medium), line => Assert.NotEqual(ScreenVerdict.Under, line.Verdict));
    }

    [Fact]
    public void RecogniseAll_NameWithinALongerOne_IsNotToldAgain() =>
        Assert.Equal(["UAN-28"], Materials.RecogniseAll(Products.Liquid("urea ammonium nitrate", 5, 10.66, "28-0-0")).Select(material => material.Name));

    [Fact]
    public void Recognise_TwoMaterialsInTheName_IsNeither() =>
        Assert.Null(Materials.Recognise(Products.Liquid("10-34-0 with UAN", 5, 11, "14-20-0")));

    [Theory]
    [InlineData(40, SoilClass.Medium, 6)]
    [InlineData(30, SoilClass.Fine, 8)]
    [InlineData(20, SoilClass.Medium, 12)]
    [InlineData(15, SoilClass.Medium, 16)]
    [InlineData(40, SoilClass.Sandy, 4)]
    [InlineData(30, SoilClass.Sandy, 6)]
    [InlineData(20, SoilClass.Sandy, 8)]
    [InlineData(15, SoilClass.Sandy, 11)]
    public void Of_KansasState_TakesTheLimitOfSoilAndRows(double inches, SoilClass soil, double pounds) =>
        Assert.Equal(pounds, Line(LimitSources.KansasState, Products.Polyphosphate(5), Medium with { RowSpacing = Length.FromInches(inches), Soil = soil }).Limit!.PoundsPerAcre);

    [Theory]
    [InlineData(36, 6)]
    [InlineData(22, 8)]
    [InlineData(29.53, 8)]
    [InlineData(10, 16)]
    public void Of_RowsThatAreNotPrinted_TakeTheNextWider(double inches, double pounds) =>
        Assert.Equal(pounds, Line(LimitSources.KansasState, Products.Polyphosphate(5), Medium with { RowSpacing = Length.FromInches(inches) }).Limit!.PoundsPerAcre);

    [Theory]
    [InlineData(SoilClass.Medium, 8, 5.6)]
    [InlineData(SoilClass.Sandy, 6, 4.2)]
    public void Of_Sorghum_TakesThirtyPercentLess(SoilClass soil, double corn, double sorghum)
    {
        Assert.Equal(corn, Line(LimitSources.KansasState, Products.Polyphosphate(5), Medium with { Soil = soil }).Limit!.PoundsPerAcre);
        Close.Absolute(sorghum, Line(LimitSources.KansasState, Products.Polyphosphate(5), Medium with { Soil = soil, Crop = "sorghum" }).Limit!.PoundsPerAcre, Tolerances.FewRoundings, "30 % less");
    }

    [Theory]
    [InlineData("soybean")]
    [InlineData("sunflower")]
    [InlineData("dry bean")]
    public void Of_CropWithNone_IsOverWhateverTheAmountAndSoil(string crop) =>
        Assert.Equal(ScreenVerdict.Over, Line(LimitSources.KansasState, Products.Dry("phosphate", 1, "0-45-0"), Medium with { Crop = crop, Soil = null }).Verdict);

    [Theory]
    [InlineData("72 lb of 11-52-0", 7.92)]
    [InlineData("6.9 gal of 10-34-0", 8.04)]
    public void Of_PublishedAmounts_MeetTheLimitOfEight(string what, double pounds)
    {
        var product = what.StartsWith("72", StringComparison.Ordinal) ? Products.Dry("11-52-0", 72, "11-52-0") : Products.Polyphosphate(6.9);
        var line = Line(LimitSources.KansasState, product, Medium);
        Close.Absolute(pounds, line.PoundsPerAcre!.Value, Tolerances.Printed(2), $"Kansas State University: {what}");
        Assert.Equal(8, line.Limit!.PoundsPerAcre);
        Assert.Equal(8, line.Compared);
        Assert.Equal(ScreenVerdict.AtLimit, line.Verdict);
    }

    [Theory]
    [InlineData("corn", 6.43, 7.49, ScreenVerdict.Under)]
    [InlineData("corn", 6.44, 7.50, ScreenVerdict.AtLimit)]
    [InlineData("corn", 7.29, 8.49, ScreenVerdict.AtLimit)]
    [InlineData("corn", 7.30, 8.50, ScreenVerdict.Over)]
    [InlineData("sorghum", 4.75, 5.53, ScreenVerdict.Under)]
    [InlineData("sorghum", 4.83, 5.63, ScreenVerdict.AtLimit)]
    [InlineData("sorghum", 4.86, 5.66, ScreenVerdict.Over)]
    public void Of_AmountNearALimit_IsComparedAtTheLimitsPrecision(string crop, double gallons, double pounds, ScreenVerdict verdict)
    {
        var line = Line(LimitSources.KansasState, Products.Polyphosphate(gallons), Medium with { Crop = crop });
        Close.Absolute(pounds, line.PoundsPerAcre!.Value, Tolerances.PrintedToTwoDecimals, $"gal/ac x 11.65 x 10 %, {crop}");
        Assert.Equal(verdict, line.Verdict);
    }

    [Fact]
    public void AsPrinted_HalfPoundFromRoundedProducts_GoesUp()
    {
        var limit = LimitSources.KansasState.Limits[0];
        Assert.Equal(9, limit.AsPrinted(8.5 - 1e-12));
        Assert.Equal(8, limit.AsPrinted(8.499));
        Assert.Throws<ArgumentOutOfRangeException>(() => limit.AsPrinted(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => limit.AsPrinted(-1));
    }

    [Theory]
    [InlineData(Placement.InFurrow, 10, 5)]
    [InlineData(Placement.InFurrow, 12, 5)]
    [InlineData(Placement.InFurrow, 14, 8)]
    [InlineData(Placement.BesideOnSurface, 10, 15)]
    [InlineData(Placement.BesideOnSurface, 14, 40)]
    [InlineData(Placement.BesideAndBelow, 10, 20)]
    [InlineData(Placement.BesideAndBelowBothSides, 14, 40)]
    public void Of_LaboratoryGuide_TakesTheLimitOfDistanceAndExchange(Placement placement, double exchange, double pounds)
    {
        var line = Line(LimitSources.LaboratoryGuide, Products.Polyphosphate(5, new PlacedShare(placement, 1)), Medium with { CationExchange = exchange });
        Assert.Equal(pounds, line.Limit!.PoundsPerAcre);
        Assert.Equal(SummedNutrients.NitrogenPotashAndSulfur, line.Limit.Sum);
    }

    [Theory]
    [InlineData(6, 5)]
    [InlineData(7, 5)]
    [InlineData(9, 8)]
    public void Of_TriState_TakesTheLimitOfExchangeAndSaysItIsFromMemory(double exchange, double pounds)
    {
        var line = Line(LimitSources.TriState, Products.Polyphosphate(5), Medium with { CationExchange = exchange });
        Assert.Equal(pounds, line.Limit!.PoundsPerAcre);
        Assert.True(line.Limit.IsFromMemory);
    }

    [Fact]
    public void Of_OhioState_CoversTheBandAndNotTheFurrow()
    {
        Assert.Equal(100, Line(LimitSources.OhioState, Products.Polyphosphate(5, new PlacedShare(Placement.BesideAndBelow, 1)), Medium).Limit!.PoundsPerAcre);
        Assert.Equal(ScreenVerdict.NotCovered, Line(LimitSources.OhioState, Products.Polyphosphate(5), Medium).Verdict);
    }

    [Fact]
    public void Of_QuarterToHalfInch_IsOnRecordForBothExchanges() =>
        Assert.Equal([8, 15], LimitSources.LaboratoryGuide.Limits.Where(limit => limit.Distance == SeedDistance.QuarterToHalfInch).Select(limit => limit.PoundsPerAcre));

    [Fact]
    public void Of_SoilNotGiven_AsksAndAssumesNothing()
    {
        var review = Review(Medium with { Soil = null, CationExchange = null }, Products.Polyphosphate(50));
        Assert.All(
            review.Treatments[0].Screen.Where(line => line.Source != LimitSources.OhioState),
            line => Assert.Equal((ScreenVerdict.SoilNotKnown, null), (line.Verdict, line.Limit)));
        var question = Assert.Single(review.Findings, finding => finding.Id == "starter-soil-not-known");
        Assert.Contains("soil_class", question.Message, StringComparison.Ordinal);
        Assert.Contains("cec", question.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_DribbleWideRowsOrAnotherCrop_IsNotCovered()
    {
        Assert.All(FurrowScreen.Of(Total(Products.Polyphosphate(5, new PlacedShare(Placement.SurfaceDribble, 1))), Medium), line => Assert.Equal(ScreenVerdict.NotCovered, line.Verdict));
        Assert.Equal(ScreenVerdict.NotCovered, Line(LimitSources.KansasState, Products.Polyphosphate(5), Medium with { RowSpacing = Length.FromInches(60) }).Verdict);
        Assert.Equal(ScreenVerdict.NotCovered, Line(LimitSources.TriState, Products.Polyphosphate(5), Medium with { Crop = "wheat" }).Verdict);
    }

    [Fact]
    public void Of_AmountNotKnown_IsSaid() =>
        Assert.Equal(ScreenVerdict.AmountNotKnown, Line(LimitSources.KansasState, Products.Polyphosphate(5) with { Analysis = null }, Medium).Verdict);

    [Fact]
    public void Of_TwoProductsInTheFurrow_AreSummed()
    {
        var total = Assert.Single(PlacementTotal.Of([Products.Polyphosphate(5), Products.Dry("potash", 10, "0-0-60")], Products.ThirtyInches));
        var line = FurrowScreen.Of(total, Medium).Single(each => each.Source == LimitSources.KansasState);
        Close.Absolute(5.825 + 6, line.PoundsPerAcre!.Value, Tolerances.Printed(3), "computed from the formula");
        Assert.Equal(ScreenVerdict.Over, line.Verdict);
    }

    [Fact]
    public void Of_EachPlacementOfASplit_IsJudgedOnItsOwnAmount()
    {
        var review = Review(Medium, Products.Polyphosphate(15, new(Placement.InFurrow, 1.0 / 3), new(Placement.BesideAndBelowBothSides, 2.0 / 3)));
        var furrow = review.Treatments[0].Screen.Single(line => line.Source == LimitSources.KansasState && line.Placement == Placement.InFurrow);
        Close.Absolute(5.825, furrow.PoundsPerAcre!.Value, Tolerances.Printed(3), "computed from the formula");
        Assert.Equal(ScreenVerdict.Under, furrow.Verdict);
    }

    [Theory]
    [InlineData("UAN 28 %", "28-0-0", "UAN-28")]
    [InlineData("clear liquid", "32-0-0", "UAN-32")]
    [InlineData("prilled urea", "46-0-0", "urea")]
    [InlineData("ATS", "12-0-0-26S", "ammonium thiosulfate")]
    [InlineData("KTS", "0-0-25-17S", "potassium thiosulfate")]
    [InlineData("anhydrous ammonia", "82-0-0", "anhydrous ammonia")]
    [InlineData("starter with boron", "6-24-6-0.02B", "boron")]
    public void Review_NeverInTheFurrow_IsNamedWithItsSource(string name, string analysis, string what)
    {
        var review = Review(Medium, Products.Dry(name, 10, analysis));
        var (_, hazard) = Assert.Single(review.Treatments[0].Hazards);
        Assert.Equal(what, hazard.What);
        Assert.True(hazard.IsNever);
        Assert.NotEmpty(hazard.Source);
        Assert.Contains(review.Findings, finding => finding.Id == "never-in-furrow" && finding.Message.Contains(StarterCautions.LabelFirst, StringComparison.Ordinal));
    }

    [Fact]
    public void Review_DiammoniumPhosphate_IsACaution() =>
        Assert.Contains(Review(Medium, Products.Dry("DAP", 10, "18-46-0")).Findings, finding => finding.Id == "furrow-wary");

    [Fact]
    public void Review_MadeFromUan_IsNeverInTheFurrowAndFreeInABand()
    {
        var mixed = Products.Liquid("blend", 5, 11, "7-21-7") with { MadeFrom = [new("10-34-0", 0.6176), new("UAN-28", 0.0294), new("potassium chloride", 0.1167)] };
        Assert.Contains(Review(Medium, mixed).Findings, finding => finding.Id == "never-in-furrow");
        Assert.DoesNotContain(Review(Medium, mixed with { Placements = [new(Placement.BesideAndBelow, 1)] }).Findings, finding => finding.Id == "never-in-furrow");
    }

    [Fact]
    public void Review_WithoutProducts_IsNone() => Assert.Null(StarterReview.Of([SmallTrial.Control], Medium));

    private static PlacementTotal Total(Product product) => PlacementTotal.Of([product], Products.ThirtyInches)[0];

    private static ScreenLine Line(LimitSource source, Product product, StarterSite site) => FurrowScreen.Of(Total(product), site).Single(line => line.Source == source);

    private static StarterReview Review(StarterSite site, Product product) => StarterReview.Of([new("t", "Treatment", Cost: null, [product])], site)!;
}
