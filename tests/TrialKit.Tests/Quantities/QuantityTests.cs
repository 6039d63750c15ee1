using CsCheck;
using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Tests.Quantities;

public class QuantityTests
{
    private static readonly Gen<double> Amount = Gen.Double[1e-3, 1e6];

    // 6,272,640 / (30 x 34,000) = 6.150 in (computed); 7.0 in at 29,840 seeds, as printed in an extension table.
    [Theory]
    [InlineData(34_000, 6.150)]
    [InlineData(29_840, 7.007)]
    public void SeedSpacing_ThirtyInchRows_IsTheTheoreticalSpacing(double seeds, double inches) =>
        Assert.Equal(inches, SeedingRate.FromPerAcre(seeds).SeedSpacing(Length.FromInches(30)).Inches, Tolerances.PrintedToThreeDecimals);

    [Fact]
    public void Quantities_BetweenUnitSystems_ComeBackUnchanged() => Amount.Sample(value =>
    {
        Same(value, PlantDensity.FromPerAcre(value).PerAcre);
        Same(value, PlantDensityDifference.FromPerAcre(-value).PerAcre * -1);
        Same(value, SeedingRate.FromPerAcre(value).PerAcre);
        Same(value, HeatSum.FromCelsiusDays(value).CelsiusDays);
        Same(value, HeatSumDifference.FromCelsiusDays(value).CelsiusDays);
        Same(value, MoneyPerArea.FromPerAcre(value, "$").PerAcre);
        Same(value, ApplicationRate.FromGallonsPerAcre(value).PerAcreUs);
        Same(value, ApplicationRate.FromPoundsPerAcre(value).PerAcreUs);
        Same(value, GrainPrice.FromPerBushel(value, "$", Mass.FromPounds(56)).PerBushel(Mass.FromPounds(56)));
    });

    // 1 gal/ac is 9.354 L/ha: exact from 3.785411784 L and 0.40468564224 ha.
    [Fact]
    public void ApplicationRate_GallonPerAcre_InLitresPerHectare() =>
        Assert.Equal(9.354, ApplicationRate.FromGallonsPerAcre(1).PerHectare, Tolerances.PrintedToThreeDecimals);

    [Fact]
    public void Guards_NotANumber_AreEachRefused() => Assert.All(
        new Action[]
        {
            () => PlantDensityDifference.FromPerHectare(double.NaN),
            () => SeedingRate.FromPerHectare(double.NaN),
            () => SeedingRate.FromPerAcre(0),
            () => HeatSum.FromFahrenheitDays(double.NaN),
            () => HeatSum.FromFahrenheitDays(-0.1),
            () => HeatSumDifference.FromFahrenheitDays(double.NaN),
            () => GrainYield.FromKilogramsPerHectare(double.NaN),
            () => GrainYieldDifference.FromKilogramsPerHectare(double.PositiveInfinity),
            () => GrainPrice.FromPerTonne(0, "$"),
            () => MoneyPerArea.FromPerHectare(double.NaN, "$"),
            () => ApplicationRate.FromLitresPerHectare(-1),
            () => Probability.Of(double.NaN),
            () => Probability.Of(1.1),
            () => ConfidenceLevel.FromAlpha(double.NaN),
            () => ConfidenceLevel.FromAlpha(0.5),
            () => ConfidenceLevel.FromAlpha(0),
        },
        refused => Assert.Throws<ArgumentOutOfRangeException>(refused));

    [Fact]
    public void ConfidenceLevel_Default_IsNinetyPercent()
    {
        Assert.Equal(0.10, default(ConfidenceLevel).Alpha);
        Assert.Equal("90 %", default(ConfidenceLevel).ToString());
    }

    private static void Same(double expected, double found) =>
        Assert.True(Math.Abs(expected - found) <= Tolerances.ClosedForm * expected, $"{expected:R} came back as {found:R}");
}
