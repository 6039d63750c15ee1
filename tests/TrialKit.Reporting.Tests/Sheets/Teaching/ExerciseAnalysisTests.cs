using TrialKit.Comparison;
using TrialKit.Heat;
using TrialKit.Ingest;
using TrialKit.Reporting.Sheets.Teaching;
using TrialKit.Reporting.Sheets.Teaching.Topics;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>The key at full precision against the analysis of the sheet's own trial folder.</summary>
public class ExerciseAnalysisTests
{
    private const double Relative = 1e-9;
    private const double ThousandPlants = 1000;

    [Theory]
    [InlineData(1)]
    [InlineData(29)]
    public void PairedT_ItsTrial_AnalysesToTheKey(ulong seed)
    {
        var exercise = Make("paired-t", seed, ExerciseLevel.Second);
        var contrast = Stand(exercise).Contrasts.Single();

        Near(Full(exercise, "mean") * ThousandPlants, contrast.Difference);
        Near(Full(exercise, "error") * ThousandPlants, contrast.Estimate!.StandardError);
        Near(Full(exercise, "t"), contrast.Estimate.T);
        Near(Full(exercise, "low") * ThousandPlants, contrast.Interval!.Value.Low);
        Near(Full(exercise, "high") * ThousandPlants, contrast.Interval.Value.High);
    }

    [Theory]
    [InlineData(1, ExerciseLevel.First)]
    [InlineData(30, ExerciseLevel.Second)]
    public void Coins_ItsTrial_AnalysesToTheKey(ulong seed, ExerciseLevel level)
    {
        var exercise = Make("coins", seed, level);

        Near(Full(exercise, "p"), Analysis(exercise).Measures.Single().Pairs!.SignFlips!.P.Value);
    }

    [Theory]
    [InlineData(1, ExerciseLevel.First)]
    [InlineData(31, ExerciseLevel.Second)]
    public void BlockAnova_ItsTrial_AnalysesToTheKey(ulong seed, ExerciseLevel level)
    {
        var exercise = Make("block-anova", seed, level);
        var anova = Stand(exercise).Blocks!.Anova;

        Near(Full(exercise, "f"), anova.Treatments.F!.Value);
        Near(Full(exercise, "ms-error") * ThousandPlants * ThousandPlants, anova.Error.MeanSquare!.Value);
        Near(Full(exercise, "df-error"), anova.Error.DegreesOfFreedom);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(32)]
    public void SpotsNotReplicates_ItsTrial_AnalysesToTheStripsOfTheKey(ulong seed)
    {
        var exercise = Make("spots-not-replicates", seed, ExerciseLevel.Second);
        var contrast = Stand(exercise).Contrasts.Single();

        // The trial's control is the slow pass.
        Near(Full(exercise, "t"), contrast.Estimate!.T);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(33)]
    public void StandCounts_ItsTrial_AnalysesToTheKey(ulong seed)
    {
        var exercise = Make("stand-counts", seed, ExerciseLevel.Second);
        var strip = Analysis(exercise).Strips.Stands[0];

        // The folder holds the length of row to a thousandth of a foot.
        Assert.Equal(Full(exercise, "mean") * ThousandPlants, strip.Mean.PerAcre, 2.0);
    }

    [Fact]
    public void DegreeDays_OfManySeeds_AreThoseOfTheLibrary()
    {
        HeatMethod[] methods = [HeatMethods.Average50, HeatMethods.Corn, HeatMethods.Find("single triangle 86/50 horizontal")!];
        string[] answers = ["average", "clipped", "triangle"];
        for (ulong seed = 0; seed < 50; seed++)
        {
            var exercise = Make("degree-days", seed, ExerciseLevel.Second);
            var days = SheetText.Of(exercise).Table("The days after planting");
            for (var i = 0; i < days.Count; i++)
            {
                var day = new DailyTemperature(
                    new DateOnly(2026, 5, 5).AddDays(i),
                    Temperature.FromDegreesFahrenheit((double)SheetText.Number(days[i][1])),
                    Temperature.FromDegreesFahrenheit((double)SheetText.Number(days[i][2])));
                for (var method = 0; method < methods.Length; method++)
                {
                    Near(Full(exercise, $"{answers[method]}{i + 1}"), DegreeDays.Of(day, methods[method]).FahrenheitDays);
                }
            }
        }
    }

    [Fact]
    public void SpotsNotReplicates_OverAThousandSeeds_CriesWolfWhereItSaysSo()
    {
        foreach (var level in new[] { ExerciseLevel.First, ExerciseLevel.Second })
        {
            var shown = Enumerable.Range(0, 1000).Select(seed => SpotsAreNotReplicates.Shown(Make("spots-not-replicates", (ulong)seed, level).Paper)).ToArray();
            var (byStrips, bySpots) = (shown.Count(each => each.ByStrips), shown.Count(each => each.BySpots));

            // One in ten, with four standard errors of a share of a thousand to either side; more than one in four.
            Assert.InRange(byStrips, 62, 138);
            Assert.True(bySpots > 250, $"{level}: judged by spots {bySpots} of 1,000 sheets show a difference; the key says more than one in four.");
        }
    }

    private static void Near(double expected, double found) =>
        Assert.True(Math.Abs(expected - found) <= Relative * Math.Max(1, Math.Abs(expected)), $"The key has {expected}, the analysis {found}.");

    private static double Full(Exercise exercise, string id) => exercise.Paper.Key.Single(step => step.Id == id).Number!.Value.Exact;

    private static Exercise Make(string topic, ulong seed, ExerciseLevel level) => ExerciseTopics.Find(topic)!.Make(seed, level);

    private static MeasureComparison Stand(Exercise exercise) => Analysis(exercise).Measures.First(measure => measure.Measure.Id == "stand");

    private static TrialAnalysis Analysis(Exercise exercise)
    {
        using var folder = new ExerciseFolder(exercise);
        return TrialAnalysis.Of(TrialReader.Read(folder.Path).Trial!);
    }
}
