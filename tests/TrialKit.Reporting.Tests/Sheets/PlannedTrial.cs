using TrialKit.Export;
using TrialKit.Ingest;
using TrialKit.Planning;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Sheets;
using TrialKit.Trials;

namespace TrialKit.Reporting.Tests.Sheets;

/// <summary>A folder with a trial that was planned and not yet counted; gone when disposed.</summary>
internal sealed class PlannedTrial : IDisposable
{
    public PlannedTrial(UnitSystem units = UnitSystem.Us, int replicates = 6, int passes = 1, string treatment = "chains")
    {
        var us = units == UnitSystem.Us;
        var trial = new NewTrial
        {
            Title = "Drag chains, north field",
            Crop = "corn",
            Question = "Do chains bring the stand up sooner?",
            Treatments = ["none", treatment],
            Planted = new DateOnly(2026, 5, 4),
            RowSpacing = us ? "30 in" : "75 cm",
            SeedingRate = us ? "34000 seeds/ac" : "84000 seeds/ha",
            PlanterRows = 8,
            StripLength = us ? "1180 ft" : "360 m",
            Replicates = replicates,
            Units = units,
        };
        foreach (var (file, text) in trial.Files().Where(file => file.File is "trial.toml" or "strips.csv"))
        {
            File.WriteAllText(In(file), text.Replace("strip = \"pass\"", $"strip = \"pass\"\npasses = {passes.ToString(System.Globalization.CultureInfo.InvariantCulture)}", StringComparison.Ordinal));
        }

        var plan = FieldPlan.Draw(Read(), 42);
        foreach (var table in new[] { PlanTables.Strips(plan, units), PlanTables.Spots(plan, units) })
        {
            using var stream = File.Create(In(table.Name + ".csv"));
            CsvTables.Write(table, stream);
        }

        Plan = plan;
        Trial = Read();
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("trialkit-planned-").FullName;

    public TrialPlan Plan { get; }

    public StripTrial Trial { get; }

    public static SheetSettings Settings(PageSize size = PageSize.Letter, params DateOnly[] visits) => new(size, [.. visits], []);

    public string In(string name) => Path.Combine(Folder, name);

    /// <summary>The folder as read; it must be without problems.</summary>
    public StripTrial Read()
    {
        var reading = TrialReader.Read(Folder);
        Assert.True(reading.Problems.Count == 0, string.Join('\n', reading.Problems));
        return reading.Trial!;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    /// <summary>Counts, visits, plants and weights of a trial as text, to compare two of them.</summary>
    public static IReadOnlyList<string> Records(StripTrial trial) =>
    [
        .. trial.Strips.Select(strip => FormattableString.Invariant($"strip {strip} {strip.Block} {strip.Treatment} {strip.Order} {strip.Length?.Meters:0.000000} {strip.Width?.Meters:0.000000} {strip.Rows} {strip.Planted:yyyy-MM-dd} {strip.LeftOut} {strip.Note}")),
        .. trial.StandCounts.Select(count => FormattableString.Invariant($"count {count.Strip} {count.Spot} {count.Date:yyyy-MM-dd} {count.Row.Meters:0.000000} {count.Rows} {count.Plants} {count.PlanterRow}")),
        .. trial.Emergence.SelectMany(spot => spot.Visits.Select(visit => FormattableString.Invariant($"visit {spot.Strip} {spot.Spot} {visit.At:yyyy-MM-dd HH:mm} {visit.Plants} {spot.Row?.Meters:0.000000}"))),
        .. trial.Plants.Select(plant => FormattableString.Invariant($"plant {plant.Strip} {plant.Spot} {plant.Name} {plant.Position?.Meters:0.000000} {plant.FirstSeen:yyyy-MM-dd HH:mm} {plant.Fate}")),
        .. trial.Harvests.Select(harvest => FormattableString.Invariant($"harvest {harvest.Strip} {harvest.Weight.Kilograms:0.000000} {harvest.Moisture.Percent:0.000000} {harvest.TestWeight?.KilogramsPerCubicMeter:0.000000}")),
    ];
}
