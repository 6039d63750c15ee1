using System.Collections.Immutable;
using CsCheck;
using TrialKit.Quantities;
using TrialKit.Stand;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Stand;

public class InRowSpacingTests
{
    // 9.0, 3.0 and 15.0 in sit on limits of classes when seeds are 6 in apart.
    private static readonly double[] Gaps = [6.2, 5.8, 2.5, 9.0, 3.0, 12.5, 6.0, 5.5, 18.5, 6.4, 6.1, 5.2, 1.0, 7.3, 15.0, 6.6, 5.9, 22.0, 4.8, 6.7];

    private static readonly SeedingRate SixInches = SeedingRate.FromPerAcre(6_272_640 / (30.0 * 6));

    [Theory]
    [InlineData(34_000, 6.150, Tolerances.PrintedToThreeDecimals, "computed from the formula, no published value")]
    [InlineData(29_840, 7.0, Tolerances.PrintedToOneDecimal, "extension table")]
    public void SeedSpacing_ThirtyInchRows_AgreesWithSource(double rate, double inches, double tolerance, string source)
    {
        var spacing = Assert.Single(Of([Plant("1", 0), Plant("2", 6), Plant("3", 12)], SeedingRate.FromPerAcre(rate))).SeedSpacing!.Value;

        Assert.True(Math.Abs(spacing.Inches - inches) < tolerance, $"{spacing.Inches} for {inches}, {source}");
    }

    [Fact]
    public void Of_TwentyGaps_AgreesWithFormula()
    {
        // Computed from the formulas, no published value; the shares by place are those of the standard from memory.
        var spacing = Assert.Single(Of(Tape(Gaps), SixInches));

        Assert.Equal(20, spacing.Gaps);
        Assert.Equal(7.8, spacing.Mean!.Value.Inches, Tolerances.ClosedForm);
        Assert.Equal(5.286925, spacing.StandardDeviation!.Value.Inches, Tolerances.PrintedToSixDecimals);
        Assert.Equal(67.781, spacing.CoefficientOfVariation!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal([3, 13, 2, 1, 1], spacing.Classes!.Counts);
        Assert.Equal(15, spacing.Classes.Multiples, Tolerances.ClosedForm);
        Assert.Equal(65, spacing.Classes.Singles, Tolerances.ClosedForm);
        Assert.Equal(20, spacing.Classes.Missed, Tolerances.ClosedForm);
        Assert.Equal(12.5, spacing.Classes.MultiplesByPlace!.Value, Tolerances.ClosedForm);
        Assert.Equal(58.333, spacing.Classes.SinglesByPlace!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(29.167, spacing.Classes.MissedByPlace!.Value, Tolerances.PrintedToThreeDecimals);
        Assert.Equal(17.4720, spacing.Precision!.Value, Tolerances.PrintedToFourDecimals);
        Assert.Empty(spacing.Findings);
    }

    [Fact]
    public void Of_TwentyGaps_LocatesEachOddOne()
    {
        var spacing = Assert.Single(Of(Tape(Gaps), SixInches));

        Assert.Equal(7, spacing.Odd.Length);
        var second = spacing.Odd[1];
        Assert.Equal((SpacingKind.Multiple, "4", "5"), (second.Kind, second.Before.Name, second.After.Name));
        Assert.Equal(0.5, second.SeedSpacings, Tolerances.ClosedForm);
        Assert.Equal("a", second.Spot);
        Assert.Equal((SpacingKind.Missed, "5", "6"), (spacing.Odd[2].Kind, spacing.Odd[2].Before.Name, spacing.Odd[2].After.Name));
    }

    [Theory]
    [InlineData(0.95, 1.412)]
    [InlineData(0.90, 2.108)]
    public void Of_EvenGapsOfASurvival_HasItsFloor(double survival, double floor)
    {
        // Seed spacing 6 in; computed from the formula, no published value.
        var spacing = Assert.Single(Of(Tape([6 / survival, 6 / survival, 6 / survival]), SixInches));

        Assert.Equal(survival, spacing.Survival!.Value, Tolerances.ClosedForm);
        Assert.Equal(floor, spacing.Floor!.Value.Inches, Tolerances.PrintedToThreeDecimals);
    }

    [Fact]
    public void Of_MorePlantsThanSeeds_HasAFloorOfNone()
    {
        var spacing = Assert.Single(Of(Tape([5.0, 5.0, 5.0]), SixInches));

        Assert.Equal(1, spacing.Survival);
        Assert.Equal(0, spacing.Floor!.Value.Inches);
    }

    [Fact]
    public void Of_SeveralSpots_MeasuresNoGapAcrossThem()
    {
        var spacing = Assert.Single(Of([Plant("1", 0), Plant("2", 6), Plant("1", 100, "b"), Plant("2", 105, "b")], SixInches));

        Assert.Equal(2, spacing.Spots);
        Assert.Equal(2, spacing.Gaps);
        Assert.Equal(5.5, spacing.Mean!.Value.Inches, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_VolunteersAndDeadPlants_AreLeftOut()
    {
        var spacing = Assert.Single(Of(
        [
            Plant("1", 0),
            Plant("2", 3) with { Fate = PlantFate.Volunteer },
            Plant("3", 6),
            Plant("4", 9) with { Fate = PlantFate.Died },
            Plant("5", 12),
            Plant("6", 13) with { Fate = PlantFate.Double },
        ],
        SixInches));

        Assert.Equal(3, spacing.Gaps);
        Assert.Equal([1, 2, 0, 0, 0], spacing.Classes!.Counts);
    }

    [Fact]
    public void Of_OneGap_IsNotSummarisedAndSaysSo()
    {
        var spacing = Assert.Single(Of([Plant("1", 0), Plant("2", 6)], SixInches));

        Assert.Null(spacing.Mean);
        Assert.Null(spacing.StandardDeviation);
        Assert.Null(spacing.CoefficientOfVariation);
        Assert.Null(spacing.Classes);
        Assert.Equal(["spacing-few-gaps"], spacing.Findings.Select(finding => finding.Id));
    }

    [Fact]
    public void Of_NoSeedingRate_HasNoClassesAndSaysSo()
    {
        var spacing = Assert.Single(Of(Tape(Gaps), rate: null));

        Assert.Equal(7.8, spacing.Mean!.Value.Inches, Tolerances.ClosedForm);
        Assert.Null(spacing.Classes);
        Assert.Null(spacing.Precision);
        Assert.Empty(spacing.Odd);
        Assert.Equal(["spacing-no-seeding-rate"], spacing.Findings.Select(finding => finding.Id));
    }

    [Fact]
    public void Classes_MostlyMultiples_HaveNoShareOfSinglesByPlace()
    {
        var spacing = Assert.Single(Of(Tape([1, 2, 1, 6]), SixInches));

        Assert.Null(spacing.Classes!.SinglesByPlace);
        Assert.Equal(75, spacing.Classes.Multiples, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_OtherOrderSpotNamesAndUnits_ChangesNothing() =>
        Gen.Select(Gen.Double[0, 25].Array[2, 20], Gen.Shuffle(Enumerable.Range(0, 21).ToArray())).Sample((gaps, order) =>
        {
            var tape = Tape([.. gaps.Select(gap => Math.Round(gap, 1))]);
            var shuffled = order.Where(i => i < tape.Length).Select(i => tape[i] with { Spot = "z", Position = Length.FromCentimeters(tape[i].Position!.Value.Centimeters) });

            var one = Assert.Single(Of(tape, SixInches));
            var other = Assert.Single(Of([.. shuffled], SixInches));

            Assert.Equal(one.Mean!.Value.Inches, other.Mean!.Value.Inches, Tolerances.ClosedForm);
            Assert.Equal(one.StandardDeviation!.Value.Inches, other.StandardDeviation!.Value.Inches, Tolerances.ClosedForm);
            Assert.Equal(one.Classes!.Counts, other.Classes!.Counts);
        });

    private static ImmutableArray<StripSpacing> Of(Plant[] plants, SeedingRate? rate)
    {
        var draft = SmallTrial.Draft with { Plants = [.. plants] };
        return InRowSpacing.Of(StripTrial.Create(draft with { Planting = draft.Planting with { Seeds = rate } }));
    }

    private static Plant[] Tape(double[] gaps)
    {
        var position = 0.0;
        return [Plant("0", 0), .. gaps.Select((gap, i) => Plant($"{i + 1}", position += gap))];
    }

    private static Plant Plant(string name, double inches, string spot = "a") => SmallTrial.Plant(SmallTrial.First, spot, name, inches);
}
