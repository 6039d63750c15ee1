using TrialKit.Numerics;
using TrialKit.Numerics.EventTimes;
using TrialKit.Tests.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics;

public sealed class TimingIndicesTests
{
    private static readonly TimingIndices SetA = TimingIndices.Of(EventCounts.SetATimes, EventCounts.SetANew, 40, 2);

    public static TheoryData<string, double> SetAValues => new()
    {
        // Computed from the formulas, no published values. The formulas are values from memory: Ellis & Roberts 1981, Labouriau 1983, Ranal & Santana 2006,
        // Kotowski 1926, Maguire 1962, Erbach 1982, Bilbro & Wanjura 1982, Primack 1980, Labouriau & Valadares 1976, Timson 1965.
        { nameof(TimingIndices.FinalPercent), 87.5 },
        { nameof(TimingIndices.MeanTime), 9.371429 },
        { nameof(TimingIndices.VarianceOfTime), 2.240336 },
        { nameof(TimingIndices.StandardDeviationOfTime), 1.496775 },
        { nameof(TimingIndices.CoefficientOfVariationOfTime), 15.971687 },
        { nameof(TimingIndices.CoefficientOfVelocity), 10.670732 },
        { nameof(TimingIndices.SpeedMaguire), 3.820779 },
        { nameof(TimingIndices.EmergenceRateIndexErbach), 9.551948 },
        { nameof(TimingIndices.EmergenceRateIndexBilbroWanjura), 3.734756 / 2 },
        { nameof(TimingIndices.Synchrony), 0.196639 },
        { nameof(TimingIndices.Uncertainty), 2.428445 },
        { nameof(TimingIndices.SumOfCumulativeTimson), 492.5 },
    };

    [Theory]
    [MemberData(nameof(SetAValues))]
    public void Of_SetA_GivesTheCheckValue(string index, double expected)
    {
        var found = (double?)typeof(TimingIndices).GetProperty(index)!.GetValue(SetA);

        Agree.Absolute(expected, found, Tolerances.PrintedToSixDecimals, index);
    }

    [Fact]
    public void Of_SetA_GivesBothMedians()
    {
        // The targets are values from memory: Coolbear et al. 1984, Farooq et al. 2005.
        Agree.Absolute(8.666667, SetA.MedianCoolbear.Time, Tolerances.PrintedToSixDecimals, "Coolbear");
        Agree.Absolute(8.625, SetA.MedianFarooq.Time, Tolerances.PrintedToSixDecimals, "Farooq");
    }

    [Fact]
    public void Of_NothingUp_LeavesEveryTimeUndefined()
    {
        var none = TimingIndices.Of([6, 7], [0, 0], 40, null);

        Assert.Equal(0.0, none.FinalPercent);
        Assert.Null(none.MeanTime);
        Assert.Null(none.SpeedMaguire);
        Assert.Null(none.Synchrony);
        Assert.Null(none.Uncertainty);
        Assert.Equal(new TimeToCount(null, CountReached.Never), none.MedianFarooq);
    }

    [Fact]
    public void Of_OnePlant_LeavesVarianceAndSynchronyUndefined()
    {
        var one = TimingIndices.Of([6, 7], [0, 1], null, null);

        Assert.Equal(7.0, one.MeanTime);
        Assert.Equal(0.0, one.Uncertainty);
        Assert.Null(one.VarianceOfTime);
        Assert.Null(one.CoefficientOfVariationOfTime);
        Assert.Null(one.Synchrony);
        Assert.Null(one.FinalPercent);
        Assert.Null(one.EmergenceRateIndexErbach);
        Assert.Null(one.EmergenceRateIndexBilbroWanjura);
    }

    [Fact]
    public void Of_VisitsNotDaily_HasNoTimsonSum() =>
        Assert.Null(TimingIndices.Of([6, 8, 9], [1, 2, 3], 10, null).SumOfCumulativeTimson);

    [Fact]
    public void Of_PlantUpAtTimeZero_HasNoRates()
    {
        var indices = TimingIndices.Of([0, 1], [1, 2], 10, 1);

        Assert.Null(indices.SpeedMaguire);
        Assert.Null(indices.EmergenceRateIndexErbach);
    }

    [Theory]
    [InlineData("times fall", new double[] { 6, 5 }, new double[] { 1, 1 }, 10.0, 1.0)]
    [InlineData("a negative count", new double[] { 6, 7 }, new double[] { 1, -1 }, 10.0, 1.0)]
    [InlineData("a count that is no number", new double[] { 6, 7 }, new double[] { 1, double.NaN }, 10.0, 1.0)]
    [InlineData("no seeds", new double[] { 6, 7 }, new double[] { 1, 1 }, 0.0, 1.0)]
    [InlineData("no row", new double[] { 6, 7 }, new double[] { 1, 1 }, 10.0, 0.0)]
    [InlineData("no visits", new double[0], new double[0], 10.0, 1.0)]
    public void Of_ImpossibleInput_IsRefused(string name, double[] times, double[] newlyUp, double sown, double row)
    {
        Assert.NotEmpty(name);
        Assert.ThrowsAny<ArgumentException>(() => TimingIndices.Of(times, newlyUp, sown, row));
    }
}
