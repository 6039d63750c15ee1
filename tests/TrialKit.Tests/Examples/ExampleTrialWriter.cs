namespace TrialKit.Tests.Examples;

/// <summary>Writes the invented tables of an example trial from its plan.</summary>
/// <remarks>
/// <c>trial.toml</c> and <c>README.md</c> are written by hand, and <c>weather.csv</c> holds real temperatures; all other tables come from here.
/// </remarks>
internal sealed class ExampleTrialWriter
{
    private readonly ExamplePlan plan;
    private readonly Chance chance;
    private readonly IReadOnlyList<StripTruth> strips;
    private readonly SortedDictionary<string, string> files = new(StringComparer.Ordinal);

    private ExampleTrialWriter(ExamplePlan plan)
    {
        this.plan = plan;
        chance = new(plan.Seed);
        strips = StripLottery.Draw(plan, chance);
    }

    /// <summary>The folder of an example.</summary>
    public static string FolderOf(ExamplePlan plan) => Path.Combine(ReferenceData.Repository, "example-trials", plan.Name);

    /// <summary>The text of every invented table, by file name.</summary>
    public static IReadOnlyDictionary<string, string> Write(ExamplePlan plan)
    {
        var writer = new ExampleTrialWriter(plan);
        writer.Strips();
        writer.StandCounts();
        writer.FlaggedSpots();
        writer.Harvest();
        writer.Measures();
        writer.SoilTemperature();
        return writer.files;
    }

    private void Strips()
    {
        var table = Table(["strip", "block", "treatment", "order", In("length", plan.Units.Long), In("width", plan.Units.Long), "rows", "planted", "left_out"]);
        foreach (var strip in strips)
        {
            table.Row(
                strip.Name,
                CsvText.Number(strip.Block),
                strip.Treatment.Name,
                CsvText.Number(strip.Order),
                CsvText.Number(strip.Length),
                CsvText.Number(plan.StripWidth),
                CsvText.Number(plan.Rows),
                strip.Planted == plan.Planted ? string.Empty : CsvText.Date(strip.Planted),
                strip.LeftOut ?? string.Empty);
        }

        files.Add("strips.csv", table.ToString());
    }

    private void StandCounts()
    {
        var table = Table(["strip", "spot", "date", In("length", plan.Units.Long), "plants", "rows", "planter_row"]);
        var date = plan.Planted.AddDays(plan.StandDay);
        foreach (var strip in strips)
        {
            for (var spot = 0; spot < plan.StandSpots; spot++)
            {
                var days = date.DayNumber - strip.Planted.DayNumber;
                var seeds = SpotLottery.Draw(plan, strip, plan.SpotSeeds * plan.StandRows, chance);
                table.Row(
                    strip.Name,
                    CsvText.Number(spot + 1),
                    CsvText.Date(date),
                    CsvText.Number(plan.SpotLength),
                    CsvText.Number(seeds.Count(seed => seed.StandsAt(days))),
                    plan.StandRows > 1 ? CsvText.Number(plan.StandRows) : string.Empty,
                    plan.PlanterRows.Count > 0 ? CsvText.Number(plan.PlanterRows[spot % plan.PlanterRows.Count]) : string.Empty);
            }
        }

        files.Add("stand-counts.csv", table.ToString());
    }

    private void FlaggedSpots()
    {
        if (plan.FlaggedSpots.Count == 0)
        {
            return;
        }

        var visits = Table(["strip", "spot", "date", plan.NewPlants ? "new_plants" : "plants", In("length", plan.Units.Long), "seeds"]);
        var plants = new PlantRows(plan, chance, Remarks());
        foreach (var strip in strips)
        {
            foreach (var spot in plan.FlaggedSpots)
            {
                var seeds = SpotLottery.Draw(plan, strip, plan.SpotSeeds, chance);
                WriteVisits(visits, strip, spot, seeds);
                plants.Add(strip, spot, seeds);
            }
        }

        files.Add("emergence.csv", visits.ToString());
        files.Add("plants.csv", plants.ToString());
    }

    private void WriteVisits(CsvText table, StripTruth strip, string spot, IReadOnlyList<SownSeed> seeds)
    {
        var before = 0;
        foreach (var day in plan.VisitDays)
        {
            var date = plan.Planted.AddDays(day);
            var standing = seeds.Count(seed => seed.StandsAt(DaysAt(strip, date, plan.VisitHour)));
            table.Row(
                strip.Name,
                spot,
                CsvText.Moment(date, plan.VisitHour),
                CsvText.Number(plan.NewPlants ? standing - before : standing),
                CsvText.Number(plan.SpotLength),
                CsvText.Number(plan.SpotSeeds));
            before = standing;
        }
    }

    private void Harvest()
    {
        var table = Table(["strip", In("weight", plan.Units.Weight), "moisture_pct", In("width", plan.Units.Long)]);
        foreach (var strip in strips)
        {
            var moisture = Math.Round(strip.Moisture, 1);
            var standardWeight = strip.Yield * plan.Units.WeightPerYield * strip.Length * plan.HarvestWidth;
            table.Row(
                strip.Name,
                CsvText.Stepped(standardWeight * (100 - plan.StandardMoisture) / (100 - moisture), plan.Units.WeightStep),
                CsvText.Stepped(moisture, 0.1),
                CsvText.Number(plan.HarvestWidth));
        }

        files.Add("harvest.csv", table.ToString());
    }

    private void Measures()
    {
        if (plan.Measures.Count == 0)
        {
            return;
        }

        var table = Table(["strip", "spot", "measure", "value", "unit"]);
        foreach (var measure in plan.Measures)
        {
            foreach (var strip in strips)
            {
                var treatment = plan.Treatments.ToList().IndexOf(strip.Treatment);
                var level = chance.Normal(measure.Means[treatment], measure.StripSpread);
                foreach (var spot in plan.FlaggedSpots)
                {
                    var value = Math.Clamp(chance.Normal(level, measure.SpotSpread), measure.Lowest, measure.Highest);
                    table.Row(strip.Name, spot, measure.Name, CsvText.Stepped(value, measure.Step), measure.Unit);
                }
            }
        }

        files.Add("measures.csv", table.ToString());
    }

    private void SoilTemperature()
    {
        if (!plan.SoilTemperature)
        {
            return;
        }

        var table = new CsvText([.. Remarks(), "Not measured: smoothed from the real air temperatures of weather.csv."], "date", "tmax_c", "tmin_c");
        foreach (var (date, maximum, minimum) in SoilTemperatures.Invent(plan, chance))
        {
            table.Row(CsvText.Date(date), CsvText.Stepped(maximum, 0.1), CsvText.Stepped(minimum, 0.1));
        }

        files.Add("soil-temperature.csv", table.ToString());
    }

    /// <summary>Days from the first midnight of a strip's planting day.</summary>
    internal static double DaysAt(StripTruth strip, DateOnly date, TimeOnly time) =>
        (date.ToDateTime(time) - strip.Planted.ToDateTime(TimeOnly.MinValue)).TotalDays;

    /// <summary>A header with its unit.</summary>
    internal static string In(string column, string unit) => $"{column}_{unit}";

    private IEnumerable<string> Remarks() => [$"Invented data from a seeded generator; its truth: tests/TrialKit.Tests/Examples, {plan.Name}."];

    private CsvText Table(IEnumerable<string> header) => new(Remarks(), header);
}
