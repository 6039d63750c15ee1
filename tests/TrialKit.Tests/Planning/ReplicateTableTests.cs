using System.Globalization;
using TrialKit.Analysis;
using TrialKit.Planning;
using TrialKit.Quantities;
using TrialKit.Tests.Numerics;
using TrialKit.Trials;
using static TrialKit.Tests.ReferenceData;

namespace TrialKit.Tests.Planning;

public class ReplicateTableTests
{
    [Fact]
    public void Detectable_Grid_MatchesReference()
    {
        var rows = 0;
        foreach (var row in Csv("power/detectable-difference-pairs.csv"))
        {
            var level = ConfidenceLevel.FromAlpha(Number(row[2]));
            var what = string.Join(' ', row);
            Close.Relative(Number(row[4]), new ReplicateTable(Number(row[0]), 2, level, 0.8).Row(Whole(row[1])).Detectable, Tolerances.PowerOfPlans, what);
            Close.Relative(Number(row[5]), new ReplicateTable(Number(row[0]), 2, level, 0.9).Row(Whole(row[1])).Detectable, Tolerances.PowerOfPlans, what);
            rows++;
        }

        Assert.True(rows > 20, $"{rows} rows");
    }

    [Fact]
    public void Required_Grid_MatchesReference()
    {
        var rows = 0;
        foreach (var row in Csv("power/pairs-required-from-cv.csv"))
        {
            var table = new ReplicateTable(Number(row[0]), 2, ConfidenceLevel.FromAlpha(Number(row[2])), Number(row[3]));
            var what = string.Join(' ', row);
            Assert.True(table.Required(Number(row[1])) == Whole(row[4]), $"{what}: {table.Required(Number(row[1]))}");
            Close.Relative(Number(row[5]), table.PowerAt(Whole(row[4]), Number(row[1])), Tolerances.PowerOfPlans, what);
            rows++;
        }

        Assert.True(rows > 20, $"{rows} rows");
    }

    [Fact]
    public void PowerAt_ThreeTreatments_IsThatOfTheTestThatJudges()
    {
        // Simulated with 400,000 draws of three means and an error of 2(n - 1) degrees of freedom, Dunnett's critical value among them.
        var table = new ReplicateTable(5, 3, ConfidenceLevel.FromAlpha(0.10), 0.8);

        Assert.Equal(0.69, table.PowerAt(4, 10), Tolerances.SimulatedPower);
        Assert.Equal(0.81, table.PowerAt(5, 10), Tolerances.SimulatedPower);
        Assert.Equal(5, table.Required(10));
    }

    [Fact]
    public void Detectable_OfAnEarlierTrial_IsWhatItsOwnAnalysisSays()
    {
        var plan = PlanTrial.Of(3, PlanTrial.Field with { Replicates = 4 });
        Strip[] strips = [.. FieldPlan.Draw(plan, 1).Strips.Select(planned => planned.Strip)];
        var analysis = TrialAnalysis.Of(StripTrial.Create(SmallTrial.Draft with
        {
            Treatments = plan.Treatments,
            Design = plan.Design,
            Strips = [.. strips],
            Measurements = [.. strips.Select((strip, i) => new StripMeasurement(strip, Spot: null, "vigor", 50 + (i * i % 7), Unit: null))],
        }));
        var measure = Assert.Single(analysis.Measures);
        var contrast = measure.Contrasts.First();
        var mean = measure.Values.Analysed.Average(entry => entry.Value);
        var cv = EarlierVariation.Of(analysis, measure.Measure.Id)!.Cv;

        var row = new ReplicateTable(cv, analysis.Trial.Treatments.Length, analysis.Trial.Design.Level, 0.8).Row(contrast.Estimate!.Replicates);

        Close.Relative(100 * contrast.Detectable!.Value / mean, row.Detectable, Tolerances.CriticalValueOfSeveral, "three treatments in four blocks");
    }

    [Fact]
    public void FPower_Grid_MatchesReference()
    {
        foreach (var row in Csv("power/power-f-rcb-grid.csv").Where(row => Whole(row[0]) > 2))
        {
            var table = new ReplicateTable(1, Whole(row[0]), ConfidenceLevel.FromAlpha(Number(row[3])), 0.8);

            Close.Absolute(Number(row[5]), table.Row(Whole(row[1]), Number(row[2])).FPower!.Value, Tolerances.NoncentralFReference, string.Join(' ', row));
        }
    }

    [Theory]
    [InlineData(2, 3, 0.25)]
    [InlineData(2, 4, 0.125)]
    [InlineData(2, 6, 0.03125)]
    [InlineData(3, 2, 1.0 / 6)]
    [InlineData(4, 3, 1.0 / 576)]
    public void SmallestExactP_CountsTheLayouts(int treatments, int replicates, double expected) =>
        Assert.Equal(expected, ReplicateTable.SmallestExactP(treatments, replicates), Tolerances.ClosedForm);

    [Fact]
    public void Optimum_OfSpots_IsCochrans()
    {
        // sqrt(20 x 25 / (1 x 4)), computed from the formula.
        Assert.Equal(Math.Sqrt(125), SpotBudget.Optimum(4, 25, 20, 1)!.Value, Tolerances.ClosedForm);
        Assert.Equal("11.2", SpotBudget.Optimum(4, 25, 20, 1)!.Value.ToString("0.0", CultureInfo.InvariantCulture));
        Assert.Null(SpotBudget.Optimum(0, 25, 20, 1));
    }

    [Fact]
    public void Required_OutOfReach_IsNull() => Assert.Null(new ReplicateTable(50, 2, default, 0.8).Required(0.1));

    [Theory]
    [InlineData(double.NaN, 2, 0.8)]
    [InlineData(0, 2, 0.8)]
    [InlineData(5, 1, 0.8)]
    [InlineData(5, 2, 1)]
    [InlineData(5, 2, double.NaN)]
    public void Constructor_ImpossibleValue_IsRefused(double cv, int treatments, double power) =>
        Assert.ThrowsAny<ArgumentException>(() => new ReplicateTable(cv, treatments, default, power));

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
