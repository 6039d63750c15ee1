using TrialKit.Ingest;
using TrialKit.Planning;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Sheets.Teaching;
using TrialKit.Stand;
using TrialKit.Starter;
using TrialKit.Trials;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>Keys that a command of the program answers too: a sheet's trial folder through the library gives what the key gives without rounding.</summary>
public class TopicsAgainstTheLibraryTests
{
    private const ulong Folders = 12;

    // Six or seven figures are printed in a key.
    private const double PrintedFigures = 2e-6;

    // Percent. Strips are weighed to a hundredth of a pound, 0.0004 bushels per acre; a chance moves by less than a tenth for each bushel.
    private const double WeighedChance = 1e-2;

    [Theory]
    [InlineData(ExerciseLevel.First)]
    [InlineData(ExerciseLevel.Second)]
    public void PSheet_ItsFolderAnalysed_HasThePPrinted(ExerciseLevel level) => EachFolder("p-of-030", level, (exercise, analysis) =>
    {
        var printed = SheetText.Number(SheetText.Of(exercise).Table("What came of it, yield in bushels per acre")[0][4]);
        var contrast = analysis.Measures.Single(measure => measure.Measure.Id == "yield").Contrasts.Single();

        Assert.Equal((double)printed, contrast.Estimate!.PTwoSided.Value, 6e-4);
    });

    [Fact]
    public void FewestPairs_OfAHundredSheets_AreThoseOfThePowerTableAsTheKeySays()
    {
        for (ulong seed = 0; seed < 100; seed++)
        {
            var exercise = Make("how-many-strips", seed, ExerciseLevel.Second);
            var table = new ReplicateTable(Full(exercise, "cv"), 2, ConfidenceLevel.FromAlpha(0.10), 0.80);

            var rounded = new ReplicateTable(Written(exercise, "cv"), 2, ConfidenceLevel.FromAlpha(0.10), 0.80);
            Assert.InRange(Full(exercise, "fewest") - table.Required(Full(exercise, "wanted"))!.Value, 0, 1);
            Assert.InRange(Written(exercise, "fewest") - rounded.Required(Written(exercise, "wanted"))!.Value, -1, 2);
        }
    }

    [Fact]
    public void UnevenEmergence_ItsFolderAnalysed_HasTheLagsOfTheKey() => EachFolder("uneven-emergence", ExerciseLevel.Second, (exercise, analysis) =>
    {
        foreach (var (treatment, prefix) in ((string, string)[])[("usual", ""), ("firm", "firm-")])
        {
            var strip = analysis.Strips.Evenness.First(each => each.Strip.Treatment.Name == treatment);

            Assert.Equal(Full(exercise, $"{prefix}mean"), strip.MeanLag!.Value, PrintedFigures * 10);
            Assert.Equal(Full(exercise, $"{prefix}within"), strip.PercentWithin48HoursOfFirst!.Value, PrintedFigures * 100);
            Assert.Equal(Full(exercise, $"{prefix}late"), strip.PercentLate!.Value, PrintedFigures * 100);
            if (prefix.Length == 0)
            {
                Assert.Contains(strip.Lags, lag => lag.BehindNeighbours is { } days && Math.Abs(days - Full(exercise, "neighbours")) < PrintedFigures * 10);
            }
        }
    });

    [Theory]
    [InlineData(ExerciseLevel.First)]
    [InlineData(ExerciseLevel.Second)]
    public void Starter_ItsFolderScreened_HasTheVerdictsOfTheKey(ExerciseLevel level) => EachFolder("starter", level, (exercise, analysis) =>
    {
        var lines = Assert.Single(analysis.Starter!.Treatments).Screen;
        AssertScreened("kansas", Placement.InFurrow, LimitSources.KansasState);
        AssertScreened("laboratory", Placement.InFurrow, LimitSources.LaboratoryGuide);
        AssertScreened("tri-state", Placement.InFurrow, LimitSources.TriState);
        if (level == ExerciseLevel.Second)
        {
            AssertScreened("band-laboratory", Placement.BesideAndBelow, LimitSources.LaboratoryGuide);
            AssertScreened("band-ohio", Placement.BesideAndBelow, LimitSources.OhioState);
        }

        void AssertScreened(string id, Placement placement, LimitSource source)
        {
            var line = lines.Single(each => each.Placement == placement && each.Source == source);
            Assert.Equal(Step(exercise, id).Full, line.Verdict == ScreenVerdict.Over ? "over" : "not over");
            Assert.Equal(Full(exercise, placement == Placement.InFurrow ? "added" : "band-added"), line.PoundsPerAcre!.Value, PrintedFigures * 100);
        }
    });

    [Theory]
    [InlineData(ExerciseLevel.First)]
    [InlineData(ExerciseLevel.Second)]
    public void Starter_BothSheets_CarryEveryCaution(ExerciseLevel level)
    {
        var exercise = Make("starter", 1, level);

        foreach (var text in (string[])[SheetText.Of(exercise).Text, SheetText.Of(exercise.Key(PageSize.Letter))])
        {
            Assert.All(StarterCautions.All, caution => Assert.Contains(caution.Text, text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void BreakEven_ItsFolderAnalysed_HasTheChancesOfTheKey() => EachFolder("break-even", ExerciseLevel.Second, (exercise, analysis) =>
    {
        var budget = Assert.Single(analysis.Money);

        Assert.Equal(Full(exercise, "pays"), 100 * budget.At!.Pays!.Value.Value, WeighedChance);
        Assert.Equal(Full(exercise, "margin-pays"), 100 * budget.At.PaysWithMargin!.Value.Value, WeighedChance);
        Assert.Equal(Full(exercise, "wrong-pays"), 100 * budget.AboveZero!.Value.Value, WeighedChance);
    });

    [Theory]
    [InlineData("left", ExerciseLevel.First)]
    [InlineData("hoed", ExerciseLevel.First)]
    [InlineData("left", ExerciseLevel.Second)]
    public void Replant_ItsFolderAnalysed_HasTheStandAndPercentOfTheKey(string treatment, ExerciseLevel level) => EachFolder("replant", level, (exercise, analysis) =>
    {
        var stands = analysis.Strips.Stands.Where(stand => stand.Strip.Treatment.Name == treatment).ToArray();
        var mean = PlantDensity.FromPerAcre(stands.Average(stand => stand.Mean.PerAcre));

        Assert.Equal(Full(exercise, $"stand-{treatment}"), mean.PerAcre / 1000, PrintedFigures * 100);
        Assert.Equal(Full(exercise, $"kept-{treatment}"), StandResponse.PercentAt(stands[0].Strip.Planted, mean)!.Value, PrintedFigures * 100);
    });

    private static void EachFolder(string topic, ExerciseLevel level, Action<Exercise, TrialAnalysis> check)
    {
        for (ulong seed = 0; seed < Folders; seed++)
        {
            var exercise = Make(topic, seed, level);
            using var folder = new ExerciseFolder(exercise);
            check(exercise, TrialAnalysis.Of(TrialReader.Read(folder.Path).Trial!));
        }
    }

    private static Exercise Make(string topic, ulong seed, ExerciseLevel level) => ExerciseTopics.Find(topic)!.Make(seed, level);

    private static KeyStep Step(Exercise exercise, string id) => exercise.Paper.Key.Single(step => step.Id == id);

    private static double Full(Exercise exercise, string id) => (double)SheetText.Number(Step(exercise, id).Full);

    private static double Written(Exercise exercise, string id) => (double)SheetText.Number(Step(exercise, id).Answer);
}
