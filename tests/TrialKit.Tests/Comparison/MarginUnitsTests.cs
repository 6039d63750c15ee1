using TrialKit.Comparison;
using TrialKit.Results;
using TrialKit.Tests.Numerics;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Comparison;

public class MarginUnitsTests
{
    [Theory]
    [InlineData(1000, "plants/ac", "plants/ha", 2471.0538146716534)]
    [InlineData(1, "plants/m2", "plants/ha", 10000)]
    [InlineData(12, "h", "d", 0.5)]
    [InlineData(9, "F-days", "C-days", 5)]
    [InlineData(1, "in", "cm", 2.54)]
    [InlineData(1, "ft", "in", 12)]
    [InlineData(3, "%", "%", 3)]
    [InlineData(3, "bu/ac", "bu/ac", 3)]
    [InlineData(62.77, "kg/ha", "bu/ac", 1)]
    public void Convert_KnownUnits_GivesTheMeasuresUnit(double amount, string unit, string wanted, double expected) =>
        Close.Relative(expected, MarginUnits.Convert(new("m", amount, unit), new Unit(wanted), Mass.FromPounds(56)), Tolerances.PrintedToTwoDecimals, $"{amount} {unit}");

    [Fact]
    public void Convert_ExactFactors_KeepTheirDigits()
    {
        Close.Relative(2.54, MarginUnits.Convert(new("m", 1, "in"), Unit.Centimetres, bushel: null), Tolerances.FewRoundings, "in");
        Close.Relative(5, MarginUnits.Convert(new("m", 9, "F-days"), Unit.CelsiusDays, bushel: null), Tolerances.FewRoundings, "F-days");
        Close.Relative(1 / 0.40468564224, MarginUnits.Convert(new("m", 1, "plants/ac"), Unit.PlantsPerHectare, bushel: null), Tolerances.FewRoundings, "acre");
    }

    [Theory]
    [InlineData("d", "cm")]
    [InlineData("bu/ac", "t/ha")]
    [InlineData("", "kPa")]
    public void Convert_NoWay_GivesNothing(string unit, string wanted) => Assert.Null(MarginUnits.Convert(new("m", 1, unit), new Unit(wanted), bushel: null));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Margin_NotAboveZeroOrNotFinite_IsRefused(double amount) => Assert.Throws<ArgumentOutOfRangeException>(() => new EquivalenceMargin("yield", amount, "bu/ac"));
}
