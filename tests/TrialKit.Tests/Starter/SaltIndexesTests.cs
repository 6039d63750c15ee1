using TrialKit.Starter;
using TrialKit.Tests.Numerics;
using TrialKit.Trials;

namespace TrialKit.Tests.Starter;

public class SaltIndexesTests
{
    /// <summary>The pairs printed together, total and per unit (Rader, White and Whittaker 1943; Mortvedt 2001), with the units that a ton of the material had.</summary>
    [Theory]
    [InlineData("ammonium nitrate", 104, 3.059, 34)]
    [InlineData("urea", 74.4, 1.618, 46)]
    [InlineData("10-34-0", 20.0, 0.455, 44)]
    [InlineData("diammonium phosphate", 29.2, 0.456, 64)]
    [InlineData("monoammonium phosphate", 26.7, 0.405, 66)]
    [InlineData("triple superphosphate", 10.1, 0.224, 45)]
    [InlineData("monopotassium phosphate", 8.4, 0.097, 86.6)]
    [InlineData("potassium chloride", 116.2, 1.936, 60)]
    [InlineData("potassium nitrate", 69.5, 1.219, 57)]
    [InlineData("potassium sulfate", 42.6, 0.852, 50)]
    [InlineData("UAN-28", 63.0, 2.250, 28)]
    [InlineData("UAN-32", 71.1, 2.221, 32)]
    [InlineData("ammonium thiosulfate", 90.4, 7.533, 12)]
    [InlineData("potassium thiosulfate", 68.0, 2.720, 25)]
    public void Find_Material_GivesThePrintedPair(string material, double total, double perUnit, double units)
    {
        var index = SaltIndexes.Find(material)!;
        Assert.Equal((total, perUnit), (index.Total, index.PerUnit));
        Close.Relative(index.Total, units * index.PerUnit, Tolerances.PrintedSaltIndex, material);
    }

    [Fact]
    public void Find_AmmoniumSulfate_FollowsTheUnitAndNotTheMisprint() =>
        Close.Absolute(21 * 3.252, SaltIndexes.Find("ammonium sulfate")!.Total, Tolerances.Printed(1), "88.3 is printed beside 3.252 a unit; 21 units make 68.3");

    [Theory]
    [InlineData("6-24-6", 11.5, false)]
    [InlineData("9-18-9", 16.7, false)]
    [InlineData("7-21-7", 27.8, false)]
    [InlineData("4-10-10", 27.5, false)]
    [InlineData("3-18-18", 8.5, true)]
    public void Of_Fluid_GivesThePrintedTotal(string name, double total, bool isFromMemory)
    {
        Assert.Equal(total, SaltIndexes.Of(Products.Liquid(name, 5, 11, name)));
        Assert.Equal(isFromMemory, SaltIndexes.Find(name)!.IsFromMemory);
    }

    [Theory]
    [InlineData("urea ammonium nitrate", "28-0-0", 63.0, null)]
    [InlineData("urea ammonium nitrate", "32-0-0", 71.1, null)]
    [InlineData("UAN", "32-0-0", 71.1, null)]
    [InlineData("urea ammonium nitrate", "30-0-0", null, "no value in this table for 30-0-0")]
    [InlineData("ammonium polyphosphate", "10-34-0", 20.0, null)]
    [InlineData("ammonium polyphosphate", "11-37-0", null, "no value in this table for 11-37-0")]
    [InlineData("ammonium sulfate", "21-0-0", 68.3, null)]
    public void Of_NameThatSeveralGradesShare_TakesTheGradeStatedOrNone(string name, string analysis, double? total, string? missing)
    {
        var product = Products.Liquid(name, 5, 11, analysis);
        Assert.Equal(total, SaltIndexes.Of(product));
        Assert.Equal(missing, SaltIndexes.Missing(product));
    }

    [Fact]
    public void Of_SharedNameWithoutAnAnalysis_IsNoGradeByGuess()
    {
        var product = Products.Liquid("UAN", 5, 11, "28-0-0") with { Analysis = null };
        Assert.Null(SaltIndexes.Of(product));
        Assert.Null(Materials.Find("UAN"));
        Assert.Contains(FurrowHazards.In(product), hazard => hazard.IsNever);
    }

    /// <summary>Pounds per gallon as printed in extension tables; those that say so are values from memory.</summary>
    [Theory]
    [InlineData("UAN-28", 10.65, 10.67)]
    [InlineData("UAN-32", 11.06, 11.06)]
    [InlineData("10-34-0", 11.4, 11.65)]
    [InlineData("ammonium thiosulfate", 11.04, 11.5)]
    [InlineData("7-21-7", 11.0, 11.2)]
    [InlineData("4-10-10", 10.3, 10.3)]
    [InlineData("11-37-0", 11.6, 11.6)]
    [InlineData("9-18-9", 11.1, 11.1)]
    [InlineData("6-24-6", 11.1, 11.1)]
    [InlineData("potassium thiosulfate", 12.2, 12.2)]
    public void DensityWords_Liquid_LieWithinWhatIsPrinted(string name, double low, double high)
    {
        var material = Materials.Find(name)!;
        var pounds = TrialKit.Quantities.LiquidDensity.PoundsPerGallon(material.Density!.Value);
        Assert.InRange(pounds, low - Tolerances.FewRoundings, high + Tolerances.FewRoundings);
        Assert.StartsWith(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{pounds:0.##} lb/gal is usual for {name}"), material.DensityWords, StringComparison.Ordinal);
        Assert.Null(Materials.Find("urea")!.DensityWords);
    }

    [Fact]
    public void OfMixture_SevenTwentyOneSeven_ReproducesThePublishedIndex()
    {
        // A ton with 21 units of P2O5 from 10-34-0, the rest of its 7 units of N from UAN-28, and 7 of K2O from potassium chloride.
        var nitrogen = 21 * 10.0 / 34;
        var index = SaltIndexes.OfMixture([("10-34-0", 21 + nitrogen), ("UAN-28", 7 - nitrogen), ("potassium chloride", 7)])!.Value;
        Close.Absolute(27.77, index, Tolerances.Printed(2), "computed from the formula; 27.8 is published");
        Close.Absolute(12.365, SaltIndexes.OfMixture([("10-34-0", 21 + nitrogen)])!.Value, Tolerances.PrintedToThreeDecimals, "computed from the formula");
        Close.Absolute(1.853, SaltIndexes.OfMixture([("UAN-28", 7 - nitrogen)])!.Value, Tolerances.PrintedToThreeDecimals, "computed from the formula");
        Close.Absolute(13.552, SaltIndexes.OfMixture([("potassium chloride", 7)])!.Value, Tolerances.PrintedToThreeDecimals, "computed from the formula");
    }

    [Fact]
    public void Of_MadeFrom_GivesTheMixturesIndex()
    {
        var phosphate = 0.21 / 0.34;
        var solution = (0.07 - (phosphate * 0.10)) / 0.28;
        var mixed = Products.Liquid("blend", 5, 11, "7-21-7") with { MadeFrom = [new("10-34-0", phosphate), new("UAN-28", solution), new("potassium chloride", 0.07 / 0.60)] };
        Close.Absolute(27.77, SaltIndexes.Of(mixed)!.Value, Tolerances.PrintedToTwoDecimals, "computed from the formula");
    }

    [Fact]
    public void Review_SeveralProducts_RanksThemTheHighestFirstAndTheUnknownLast()
    {
        var review = StarterReview.Of(
            [new("t", "Treatment", Cost: null, [Products.Polyphosphate(3), Products.Dry("muriate of potash", 5, "0-0-60"), Products.Dry("compost tea", 5, "1-1-1")])],
            new("corn", Products.ThirtyInches, Soil: null, CationExchange: null))!;
        Assert.Equal([116.2, 20.0, null, null], review.Salts.Select(salt => salt.Index));
        Assert.Contains("with", review.Salts[^1].Name, StringComparison.Ordinal);
        Assert.Equal([null, null, "no value in this table for 1-1-1", "a product of it has no value or no weight"], review.Salts.Select(salt => salt.Missing));
    }

    [Fact]
    public void Of_TwoProductsTogether_WeighsByWeight()
    {
        var total = Assert.Single(PlacementTotal.Of([Products.Dry("DAP", 30, "18-46-0"), Products.Dry("KCl", 10, "0-0-60")], Products.ThirtyInches));
        Close.Absolute(((30 * 29.2) + (10 * 116.2)) / 40, SaltIndexes.Of(total)!.Value, Tolerances.ClosedForm, "weighted mean");
    }

    [Fact]
    public void Find_Materials_AllHaveAnAnalysisWithinTheWhole() => Assert.All(Materials.All, material => Assert.InRange(material.Analysis.Total, 1, 100));
}
