namespace TrialKit.Tests.Examples;

/// <summary>Writes plants.csv: the plants of the flagged spots along the tape, as the visits found them.</summary>
internal sealed class PlantRows
{
    private const double DaysPerCollar = 6.5;
    private const double CollarSpread = 0.15;
    private const int DugUp = 3;
    private const double DepthStep = 0.1;
    private const double InchesFromCrownToSurface = 0.75;

    private readonly ExamplePlan plan;
    private readonly Chance chance;
    private readonly CsvText table;

    public PlantRows(ExamplePlan plan, Chance chance, IEnumerable<string> remarks)
    {
        (this.plan, this.chance) = (plan, chance);
        table = new(
            remarks,
            "strip",
            "spot",
            "plant",
            ExampleTrialWriter.In("position", plan.Units.Short),
            "first_seen",
            "collars",
            ExampleTrialWriter.In("depth", plan.Units.Short),
            ExampleTrialWriter.In("mesocotyl", plan.Units.Short),
            "note");
    }

    /// <summary>Adds the plants of one spot.</summary>
    public void Add(StripTruth strip, string spot, IReadOnlyList<SownSeed> seeds)
    {
        var number = 0;
        foreach (var seed in seeds)
        {
            if (FirstSeen(strip, seed) is not { } seen)
            {
                continue;
            }

            number++;
            var dug = number % DugUp == 0 ? plan.PlantColumns : PlantColumns.None;
            table.Row(
                strip.Name,
                spot,
                CsvText.Number(number),
                CsvText.Stepped(seed.Position, plan.Units.ShortStep),
                CsvText.Moment(seen, plan.VisitHour),
                Collars(strip, seed),
                dug.HasFlag(PlantColumns.Depth) ? CsvText.Stepped(seed.Depth, DepthStep) : string.Empty,
                dug.HasFlag(PlantColumns.Mesocotyl) ? CsvText.Stepped(seed.Depth - InchesFromCrownToSurface, DepthStep) : string.Empty,
                Note(seed));
        }
    }

    /// <inheritdoc/>
    public override string ToString() => table.ToString();

    private static string Note(SownSeed seed) => (seed.IsDouble, double.IsFinite(seed.DeadAt)) switch
    {
        (_, true) => "died",
        (true, _) => "double",
        _ => string.Empty,
    };

    private DateOnly? FirstSeen(StripTruth strip, SownSeed seed) =>
        plan.VisitDays
            .Select(day => (DateOnly?)plan.Planted.AddDays(day))
            .FirstOrDefault(date => seed.StandsAt(ExampleTrialWriter.DaysAt(strip, date!.Value, plan.VisitHour)));

    private string Collars(StripTruth strip, SownSeed seed)
    {
        if (!plan.PlantColumns.HasFlag(PlantColumns.Collars))
        {
            return string.Empty;
        }

        var age = ExampleTrialWriter.DaysAt(strip, plan.Planted.AddDays(plan.StandDay), plan.VisitHour) - seed.UpAt;
        return CsvText.Number(Math.Max(1, Math.Floor((age / DaysPerCollar) + chance.Normal(0, CollarSpread))));
    }
}
