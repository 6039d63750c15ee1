using TrialKit.Export;
using TrialKit.Ingest;
using TrialKit.Planning;
using TrialKit.Quantities;

namespace TrialKit.Tests.Planning;

public class NewTrialTests
{
    public static TheoryData<string, NewTrial> Trials() => new()
    {
        { "us pairs", Trial },
        { "metric blocks", Trial with { Units = UnitSystem.Metric, RowSpacing = "75 cm", SeedingRate = "80000 seeds/ha", StripLength = "360 m", Treatments = ["check", "a", "b"] } },
        { "quotes and backslashes", Trial with { Title = "The \"north\" forty\\field", Question = "One\nline?" } },
    };

    [Theory]
    [MemberData(nameof(Trials))]
    public void Files_AreAPlanWithoutProblems_BeforeAndAfterTheLottery(string name, NewTrial trial)
    {
        var folder = Directory.CreateTempSubdirectory("trialkit-new-").FullName;
        try
        {
            foreach (var (file, text) in trial.Files())
            {
                File.WriteAllText(Path.Combine(folder, file), text);
            }

            var read = TrialReader.Read(folder);
            Assert.True(read.Problems.Count == 0, $"{name}: {string.Join('\n', read.Problems)}");
            Assert.True(read.Trial!.IsPlan);
            Assert.Empty(read.Trial.Strips);

            var plan = FieldPlan.Draw(read.Trial, 5);
            foreach (var table in new[] { PlanTables.Strips(plan, trial.Units), PlanTables.Spots(plan, trial.Units) })
            {
                using var stream = File.Create(Path.Combine(folder, table.Name + ".csv"));
                CsvTables.Write(table, stream);
            }

            File.WriteAllText(Path.Combine(folder, "plan.toml"), "seed = 5\n");
            var drawn = TrialReader.Read(folder);
            Assert.True(drawn.Problems.Count == 0, $"{name}: {string.Join('\n', drawn.Problems)}");
            Assert.Equal(5, drawn.Trial!.PlanSeed);
            Assert.Equal(plan.Strips.Select(strip => (strip.Strip.Name, strip.Strip.Treatment.Name)), drawn.Trial.Strips.Select(strip => (strip.Name, strip.Treatment.Name)));
            Assert.Equal(plan.Spots.Select(place => (place.Spot.Name, place.Spot.PlanterRow)), drawn.Trial.PlannedSpots.Select(spot => (spot.Name, spot.PlanterRow)));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static NewTrial Trial { get; } = new()
    {
        Title = "Drag chains, north field",
        Crop = "corn",
        Question = "Do chains bring the stand up sooner?",
        Treatments = ["none", "chains"],
        Planted = new DateOnly(2026, 5, 4),
        RowSpacing = "30 in",
        SeedingRate = "34000 seeds/ac",
        PlanterRows = 8,
        StripLength = "1180 ft",
        Replicates = 6,
    };
}
