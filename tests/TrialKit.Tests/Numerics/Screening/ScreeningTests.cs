using System.Text.Json;
using CsCheck;
using TrialKit.Numerics;
using TrialKit.Numerics.Screening;
using TrialKit.Tests.Numerics.Pairs;

namespace TrialKit.Tests.Numerics.Screening;

/// <summary>Screens of a sample against <c>reference-data/screening/misc.json</c> (R 4.2.2).</summary>
public class ScreeningTests
{
    private static readonly double[] Weights = [148, 154, 158, 160, 161, 162, 166, 170, 182, 195, 236];

    [Theory]
    [InlineData("scipy1", "0.11,7.87,4.61,10.14,7.95,3.14,0.46,4.43,0.21,4.75,0.71,1.52,3.24,0.93,0.42,4.97,9.53,4.55,0.47,6.66")]
    [InlineData("weights1965", "148,154,158,160,161,162,166,170,182,195,236")]
    [InlineData("n3", "1,2,4")]
    [InlineData("n3_equal_spaced", "1,2,3")]
    [InlineData("n4", "1,2,4,7")]
    [InlineData("n5", "1,2,4,7,20")]
    [InlineData("n12", "1,2,3,4,5,6,7,8,9,10,11,30")]
    public void ShapiroWilk_Test_MatchesReference(string name, string data)
    {
        var expected = Misc("shapiro").GetProperty("values").GetProperty(name);
        var result = ShapiroWilk.Test([.. data.Split(',').Select(ReferenceData.Number)]);
        Close.Relative(expected.GetProperty("W").GetDouble(), result.W, Tolerances.ClosedForm, name);
        Close.Relative(expected.GetProperty("p").GetDouble(), result.P, Tolerances.ClosedForm, name);
    }

    [Fact]
    public void ShapiroWilk_PairedDifferences_MatchReference()
    {
        foreach (var (name, d, values) in PairCases.All())
        {
            var result = ShapiroWilk.Test(d);
            Close.Relative(values.Number("shapiro", "W"), result.W, Tolerances.ClosedForm, name);
            Close.Relative(values.Number("shapiro", "p"), result.P, Tolerances.ClosedForm, name);
        }
    }

    [Theory]
    [InlineData(1e-12, 0)]
    [InlineData(1e12, 0)]
    [InlineData(-1, 5)]
    [InlineData(0.3, -7000)]
    public void ShapiroWilk_OtherUnits_ChangeNothing(double scale, double shift)
    {
        var expected = ShapiroWilk.Test(Weights);
        double[] moved = [.. Weights.Reverse().Select(value => (scale * value) + shift)];
        Close.Relative(expected.W, ShapiroWilk.Test(moved).W, Tolerances.ChangeOfUnits, "W");
        Close.Relative(expected.P, ShapiroWilk.Test(moved).P, Tolerances.ChangeOfUnits, "p");
    }

    [Fact]
    public void Grubbs_MassSpectrometer_MatchesReference()
    {
        var reference = Misc("grubbs");
        double[] data = [.. reference.GetProperty("data").EnumerateArray().Select(value => value.GetDouble())];
        var values = reference.GetProperty("values");
        var result = Grubbs.Test(data);
        Assert.Equal(7, result.Index);
        Close.Relative(values.GetProperty("G").GetDouble(), result.G, Tolerances.ClosedForm, "G");
        Close.Relative(values.GetProperty("p_bonf_two").GetDouble(), result.P, Tolerances.NearSingular, "p");
        foreach (var row in values.GetProperty("crit_table_two05").EnumerateObject())
        {
            var n = (int)ReferenceData.Number(row.Name);
            Close.Relative(row.Value.GetDouble(), Grubbs.CriticalValue(n, 0.05), Tolerances.ClosedForm, $"two-sided, n {n}");
            Close.Relative(values.GetProperty("crit_table_one05").GetProperty(row.Name).GetDouble(), Grubbs.CriticalValue(n, 0.1), Tolerances.ClosedForm, $"one-sided, n {n}");
        }
    }

    [Fact]
    public void Grubbs_OneValueApartFromEqualOnes_HasTheLargestG()
    {
        var result = Grubbs.Test([5, 5, 5, 9]);
        Assert.Equal(3, result.Index);
        Close.Relative(1.5, result.G, Tolerances.ClosedForm, "(n - 1) / sqrt(n)");
        Assert.InRange(result.P, 0, 1e-6);
    }

    [Fact]
    public void Spread_Gears_MatchReference()
    {
        var reference = Misc("nist_gear");
        double[][] groups = [.. reference.GetProperty("data").EnumerateArray().Select(group => group.EnumerateArray().Select(value => value.GetDouble()).ToArray())];
        var values = reference.GetProperty("values");
        var bartlett = Bartlett.Test(groups);
        Assert.Equal(9, bartlett.DegreesOfFreedom);
        Close.Relative(values.GetProperty("bartlett").GetDouble(), bartlett.ChiSquare, Tolerances.ClosedForm, "Bartlett");
        Close.Relative(values.GetProperty("bartlett_p").GetDouble(), bartlett.P, Tolerances.ClosedForm, "Bartlett p");
        var brownForsythe = BrownForsythe.Test(groups);
        Assert.Equal((9, 90), (brownForsythe.Df1, brownForsythe.Df2));
        Close.Relative(values.GetProperty("brown_forsythe").GetDouble(), brownForsythe.F, Tolerances.ClosedForm, "Brown-Forsythe");
        Close.Relative(values.GetProperty("bf_p").GetDouble(), brownForsythe.P, Tolerances.ClosedForm, "Brown-Forsythe p");
    }

    [Fact]
    public void Spread_ShiftedGroupsAndOtherUnits_ChangeNothing() =>
        Gen.Select(Gen.Double[1, 9].Array[3, 6].Where(group => Summary.Variance(group) > 0.1).Array[2, 4], Gen.Double[-50, 50], Gen.Double[0.1, 20]).Sample((groups, shift, scale) =>
        {
            double[][] moved = [.. groups.Select((group, i) => group.Select(value => (scale * value) + (i * shift)).ToArray())];
            Close.Relative(Bartlett.Test(groups).P, Bartlett.Test(moved).P, Tolerances.ChangeOfUnits, "Bartlett");
            Close.Relative(BrownForsythe.Test(groups).P, BrownForsythe.Test(moved).P, Tolerances.ChangeOfUnits, "Brown-Forsythe");
        });

    [Fact]
    public void Multiplicity_Adjusted_MatchesReference()
    {
        var reference = Misc("p_adjust");
        double[] p = [.. reference.GetProperty("data").EnumerateArray().Select(value => value.GetDouble())];
        Check("holm", Multiplicity.Holm(p));
        Check("bonferroni", Multiplicity.Bonferroni(p));

        // The order of the comparisons is the caller's; each keeps its own adjusted value.
        double[] reversed = [.. p.Reverse()];
        Assert.Equal(Multiplicity.Holm(p).Reverse(), Multiplicity.Holm(reversed));

        void Check(string method, double[] adjusted)
        {
            var expected = reference.GetProperty("values").GetProperty(method);
            Assert.Equal(expected.GetArrayLength(), adjusted.Length);
            for (var i = 0; i < adjusted.Length; i++)
            {
                Close.Relative(expected[i].GetDouble(), adjusted[i], Tolerances.ClosedForm, $"{method} {i}");
            }
        }
    }

    [Fact]
    public void Screens_ImpossibleInput_SayWhatWasFound()
    {
        Assert.Contains("at least 3", Assert.Throws<ArgumentException>(() => ShapiroWilk.Test([1, 2])).Message, StringComparison.Ordinal);
        Assert.Contains("All 4 values equal", Assert.Throws<ArgumentException>(() => ShapiroWilk.Test([0.1, 0.1, 0.1, 0.1])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => ShapiroWilk.Test(new double[5001]));
        Assert.Throws<ArgumentException>(() => Grubbs.Test([0, 0, 0]));
        Assert.Throws<ArgumentException>(() => Grubbs.Test([0, double.NaN, 0]));
        Assert.Throws<ArgumentException>(() => Bartlett.Test([[1, 1], [1, 2]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Bartlett.Test([[1, 2]]));
        Assert.Throws<ArgumentException>(() => BrownForsythe.Test([[1, 2], [3, 4]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Multiplicity.Holm([0.2, 1.2]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Multiplicity.Bonferroni([]));
    }

    private static JsonElement Misc(string name) => ReferenceData.Json("screening/misc.json").GetProperty(name);
}
