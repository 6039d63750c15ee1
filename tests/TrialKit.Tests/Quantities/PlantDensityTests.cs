using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Tests.Quantities;

public class PlantDensityTests
{
    // Exact lengths computed from 522.72 / width; printed feet and inches from extension tables (University of Tennessee 2011, Nebraska 2009).
    [Theory]
    [InlineData(7.5, 69.696, 69, 8)]
    [InlineData(15, 34.848, 34, 10)]
    [InlineData(20, 26.136, 26, 2)]
    [InlineData(22, 23.760, 23, 9)]
    [InlineData(28, 18.669, 18, 8)]
    [InlineData(30, 17.424, 17, 5)]
    [InlineData(32, 16.335, 16, 4)]
    [InlineData(36, 14.520, 14, 6)]
    [InlineData(38, 13.756, 13, 9)]
    [InlineData(40, 13.068, 13, 1)]
    public void RowOfThousandthAcre_RowWidth_IsTheTablesLength(double rowInches, double exactFeet, int printedFeet, int printedInches)
    {
        var length = PlantDensity.RowOfThousandthAcre(Length.FromInches(rowInches));

        Assert.Equal(exactFeet, length.Feet, Tolerances.PrintedToThreeDecimals);
        Assert.Equal((printedFeet * 12) + printedInches, Math.Round(length.Inches, MidpointRounding.AwayFromZero));
    }

    [Fact]
    public void FromRowCount_ThousandthAcre_IsAThousandTimesTheCount() =>
        Assert.Equal(29_000, PlantDensity.FromRowCount(29, PlantDensity.RowOfThousandthAcre(Length.FromInches(30)), Length.FromInches(30)).PerAcre, 29_000 * Tolerances.ClosedForm);

    // Illinois Extension, measuring wheel: 150 plants in 94 ft of 30-inch row are 27,804 plants an acre.
    [Fact]
    public void FromRowCount_MeasuringWheelExample_IsThePublishedFigure() =>
        Assert.Equal(27_804, PlantDensity.FromRowCount(150, Length.FromFeet(94), Length.FromInches(30)).PerAcre, 0.5);

    // 30-inch hoop: 8,874.0 an acre a plant (computed); Purdue prints 8,878 with pi taken as 3.14, 159,804 for 18 plants.
    [Fact]
    public void FromHoop_ThirtyInches_IsTheFactorWithTheTruePi()
    {
        Assert.Equal(8_874.0, PlantDensity.FromHoop(1, Length.FromInches(30)).PerAcre, 0.05);
        Assert.Equal(159_804 * 3.14 / Math.PI, PlantDensity.FromHoop(18, Length.FromInches(30)).PerAcre, 18 * 0.5);
    }

    // NDSU 2016: 36 plants in a 30-inch hoop are 7.33 plants a square foot.
    [Fact]
    public void FromHoop_NdsuExample_IsThePublishedDensity() =>
        Assert.Equal(7.33, PlantDensity.FromHoop(36, Length.FromInches(30)).PerAcre / 43_560, 0.005);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(double.PositiveInfinity)]
    public void FromPerHectare_NotADensity_IsRefusedWithWhatWasFound(double plants)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => PlantDensity.FromPerHectare(plants));
        Assert.Contains("0 or more", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FromRowCount_NoRow_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PlantDensity.FromRowCount(30, Length.Zero, Length.FromInches(30)));

    [Fact]
    public void Subtract_ThinnerFirst_IsNegative() =>
        Assert.Equal(-1000, (PlantDensity.FromPerAcre(30_000) - PlantDensity.FromPerAcre(31_000)).PerAcre, 31_000 * Tolerances.ClosedForm);
}
