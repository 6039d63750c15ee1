using TrialKit.Numerics;

namespace TrialKit.Tests.Numerics;

public sealed class SpacingTests
{
    private static readonly double[] Example = [6.2, 5.8, 2.5, 9.0, 3.0, 12.5, 6.0, 5.5, 18.5, 6.4, 6.1, 5.2, 1.0, 7.3, 15.0, 6.6, 5.9, 22.0, 4.8, 6.7];

    [Fact]
    public void Of_Example_GivesClassesAndMoments()
    {
        var spacing = Spacing.Of(Example, 6.0);

        Assert.Equal([3, 13, 2, 1, 1], spacing.Counts.ToArray());
        Agree.Absolute(7.8, spacing.Mean, Tolerances.PrintedToSixDecimals, "mean");
        Agree.Absolute(5.286925, spacing.StandardDeviation, Tolerances.PrintedToSixDecimals, "SD");
        Agree.Absolute(67.781, spacing.CoefficientOfVariation, Tolerances.PrintedToThreeDecimals, "CV");
        Agree.Absolute(17.4720, spacing.Precision, Tolerances.PrintedToFourDecimals, "precision");
    }

    [Fact]
    public void Shares_Example_FollowBothConventions()
    {
        var spacing = Spacing.Of(Example, 6.0);

        Assert.Equal(new SpacingShares(3 / 20.0, 13 / 20.0, 4 / 20.0), spacing.OfSpacings);
        Assert.Equal(24, spacing.IsoIntervals);
        Assert.Equal(new SpacingShares(3 / 24.0, 14 / 24.0, 7 / 24.0), spacing.OfIsoIntervals);
    }

    [Theory]
    [InlineData(0.0, 1)]
    [InlineData(0.5, 1)]
    [InlineData(0.51, 2)]
    [InlineData(1.5, 2)]
    [InlineData(2.5, 3)]
    [InlineData(2.51, 4)]
    [InlineData(3.5, 4)]
    [InlineData(3.51, 5)]
    public void ClassOf_Limits_BelongBelow(double ratio, int expected) => Assert.Equal(expected, Spacing.ClassOf(ratio));

    [Fact]
    public void ClassOf_LimitMissedByRounding_StillBelongsBelow() =>
        Assert.Equal(2, Spacing.ClassOf(0.3 * 3.0 / 0.6));

    [Fact]
    public void Of_MostlyMultiples_HasNoIsoQualityOfFeed()
    {
        var spacing = Spacing.Of([1, 1, 1, 6], 6.0);

        Assert.Null(spacing.OfIsoIntervals!.Value.QualityOfFeed);
        Assert.Null(spacing.Precision);
    }

    [Fact]
    public void Of_OnlyMultiples_HasNoIsoShares() => Assert.Null(Spacing.Of([1, 2], 6.0).OfIsoIntervals);

    [Fact]
    public void Of_OneSpacing_HasNoDeviation()
    {
        Assert.Null(Spacing.Of([6], 6.0).StandardDeviation);
        Assert.Null(Spacing.Of([6], 6.0).CoefficientOfVariation);
        Assert.Null(Spacing.Of([0, 0], 6.0).CoefficientOfVariation);
    }

    [Theory]
    [InlineData(0.95, 1.412)]
    [InlineData(0.90, 2.108)]
    public void FloorOfDeviation_SixInches_GivesTheValue(double survival, double expected) =>
        Agree.Absolute(expected, Spacing.FloorOfDeviation(6.0, survival), Tolerances.PrintedToThreeDecimals, $"survival {survival}");

    [Fact]
    public void PrecisionCeiling_UniformWithinClassTwo_IsNearTwentyNine() =>
        Agree.Absolute(29.0, Spacing.PrecisionCeiling, 0.5, "stated as 29 per cent");

    [Fact]
    public void Of_ImpossibleInput_IsRefused()
    {
        Assert.ThrowsAny<ArgumentException>(() => Spacing.Of([], 6.0));
        Assert.ThrowsAny<ArgumentException>(() => Spacing.Of([6, -1], 6.0));
        Assert.ThrowsAny<ArgumentException>(() => Spacing.Of([6, double.NaN], 6.0));
        Assert.ThrowsAny<ArgumentException>(() => Spacing.Of([6], 0.0));
        Assert.ThrowsAny<ArgumentException>(() => Spacing.Of([6], double.NaN));
        Assert.ThrowsAny<ArgumentException>(() => Spacing.FloorOfDeviation(6.0, 0.0));
        Assert.ThrowsAny<ArgumentException>(() => Spacing.ClassOf(double.NaN));
    }
}
