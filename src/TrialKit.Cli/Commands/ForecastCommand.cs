using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Heat;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit forecast</c>: when a crop emerges, by the heat it needs, for one planting date or each of a window.</summary>
internal sealed class ForecastCommand
{
    private readonly Argument<string?> folder = new("FOLDER") { Description = "The trial folder; leave it out to work from --weather and --crop alone.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> file = new("--weather") { Description = "The weather record, in any form that is recognised.", HelpName = "FILE" };
    private readonly Option<string?> crop = new("--crop") { Description = "The crop.", HelpName = "NAME" };
    private readonly Option<string?> planted = new("--planted") { Description = "The planting date.", HelpName = "DATE" };
    private readonly Option<string?> from = new("--from") { Description = "First planting date of a window.", HelpName = "DATE" };
    private readonly Option<string?> to = new("--to") { Description = "Last planting date of a window.", HelpName = "DATE" };
    private readonly Option<string?> until = new("--observed-until") { Description = "Last day of the record to take as observed.", HelpName = "DATE" };
    private readonly Option<string?> forecast = new("--forecast") { Description = "Days of a weather forecast.", HelpName = "FILE" };
    private readonly Option<string?> normals = new("--normals") { Description = "A record of earlier years, whose daily means stand in for what no forecast covers.", HelpName = "FILE" };
    private readonly Option<double?> need = new("--need") { Description = "Heat from planting to emergence in F-days by the crop's method, in place of the published range.", HelpName = "F-DAYS" };
    private readonly Option<double?> depth = new("--depth") { Description = "Planting depth in inches.", HelpName = "INCHES" };
    private readonly Option<double?> residue = new("--residue") { Description = "Ground covered by residue, percent.", HelpName = "PERCENT" };
    private readonly Option<string?> texture = new("--texture") { Description = "Soil: fine, medium or coarse.", HelpName = "SOIL" };
    private readonly Option<bool> dry = new("--dry") { Description = "The soil about the seed is dry." };
    private readonly Option<bool> notCounted = new("--skip-planting-day") { Description = "Do not count the planting day's heat." };
    private readonly Option<bool> quiet = CommonOptions.Quiet();
    private readonly WeatherArguments weather = new();
    private readonly Terminal terminal;

    private ForecastCommand(Terminal terminal) => this.terminal = terminal;

    public static Command Create(Terminal terminal)
    {
        var made = new ForecastCommand(terminal);
        made.texture.AcceptOnlyFromAmong("fine", "medium", "coarse");
        var command = new Command("forecast", "Tell when a crop emerges from the heat after planting: for a trial, for a planting date, or for each date of a window.")
        {
            made.folder, made.file, made.crop, made.planted, made.from, made.to, made.until, made.forecast, made.normals,
            made.need, made.depth, made.residue, made.texture, made.dry, made.notCounted, made.quiet,
        };
        made.weather.AddTo(command);
        command.SetAction(made.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var (figure, csv) = (weather.Figure(parsed), weather.Csv(parsed));
        var plan = parsed.GetValue(folder) is { } path ? OfTrial(path, parsed) : OfOptions(parsed);
        if (plan is null)
        {
            return ExitCode.DataErrors;
        }

        var forecasts = Forecasts(plan, parsed);
        if (!parsed.GetValue(quiet))
        {
            ForecastPrinter.Print(plan, forecasts, terminal);
        }

        if (csv is not null)
        {
            WholeFile.Write(csv, stream => CsvTables.Write(ForecastTables.Of(forecasts), stream));
        }

        if (figure is not null)
        {
            Draw(figure, plan, forecasts);
        }

        return ExitCode.Done;
    }

    private IReadOnlyList<EmergenceForecast> Forecasts(ForecastPlan plan, ParseResult parsed)
    {
        var (first, last) = (WeatherArguments.Date(parsed.GetValue(from), "--from"), WeatherArguments.Date(parsed.GetValue(to), "--to"));
        if (first is { } begin && last is { } end)
        {
            return end >= begin && end.DayNumber - begin.DayNumber <= 366
                ? EmergenceForecast.OfWindow(plan.Days, plan.Need, begin, end, plan.CountsPlantingDay)
                : throw new UsageException("the window --from to --to ends before it begins, or is longer than a year.");
        }

        if (first is not null || last is not null)
        {
            throw new UsageException("a window needs both --from and --to.");
        }

        return plan.Planted is { } day
            ? [EmergenceForecast.Of(plan.Days, plan.Need, day, plan.CountsPlantingDay)]
            : throw new UsageException("a planting date was expected: --planted DATE, or a window with --from and --to.");
    }

    private ForecastPlan? OfTrial(string path, ParseResult parsed)
    {
        if (parsed.GetValue(file) is not null || parsed.GetValue(crop) is not null)
        {
            throw new UsageException("a trial folder brings its own weather and crop; give either the folder or --weather with --crop.");
        }

        if (TrialFolder.Read(path, terminal, eachWarning: false).Trial is not { } trial)
        {
            return null;
        }

        var days = ForecastDays.Of(trial) ?? throw new UsageException($"the trial in '{path}' has no temperatures; weather.csv was expected.");
        var needed = HeatNeeds.Of(trial) ?? throw NoNeed(trial.Crop, "need = \"115 F-days\" under [forecast] in trial.toml");
        return new(trial.Crop, needed, days, trial.SoilTemperature is not null, WeatherArguments.Date(parsed.GetValue(planted), "--planted") ?? trial.Planting.Date, trial.Heat.CountPlantingDay, trial.Planting.Depth, days.Series.Source);
    }

    private ForecastPlan? OfOptions(ParseResult parsed)
    {
        if (parsed.GetValue(file) is not { } record || parsed.GetValue(crop) is not { } name)
        {
            throw new UsageException("a trial folder was expected, or --weather FILE with --crop NAME.");
        }

        var known = CropTable.Find(name) ?? throw new UsageException($"'{name}' is no crop that is built in; one of {string.Join(", ", CropTable.Crops.Select(each => each.Name))} was expected.");
        var inches = Positive(parsed.GetValue(depth), "--depth");
        var conditions = new FieldConditions(
            inches is { } deep ? Length.FromInches(deep) : null,
            Positive(parsed.GetValue(residue), "--residue") is { } percent ? Ratio.FromPercent(percent) : null,
            parsed.GetValue(texture) switch { "fine" => SoilTexture.Fine, "medium" => SoilTexture.Medium, "coarse" => SoilTexture.Coarse, _ => null },
            parsed.GetValue(dry));
        var needed = Positive(parsed.GetValue(need), "--need") is { } sum
            ? new HeatNeed(new HeatRange(HeatSum.FromFahrenheitDays(sum), HeatSum.FromFahrenheitDays(sum), HeatSum.FromFahrenheitDays(sum)), known.Heat, "given", [])
            : HeatNeeds.Of(known, conditions) ?? throw NoNeed(known, "--need F-DAYS");
        var isQuiet = parsed.GetValue(quiet);
        if (weather.Read(record, parsed, terminal, isQuiet) is not { } series)
        {
            return null;
        }

        var (ahead, years) = (parsed.GetValue(forecast), parsed.GetValue(normals));
        var coming = ahead is null ? null : weather.Read(ahead, parsed, terminal, isQuiet);
        var earlier = years is null ? null : weather.Read(years, parsed, terminal, isQuiet);
        return (ahead is not null && coming is null) || (years is not null && earlier is null)
            ? null
            : new(
                known,
                needed,
                ForecastDays.Of(series, WeatherArguments.Date(parsed.GetValue(until), "--observed-until"), coming, earlier),
                weather.ReadsSoil(parsed),
                WeatherArguments.Date(parsed.GetValue(planted), "--planted"),
                !parsed.GetValue(notCounted),
                conditions.Depth,
                Path.GetFileName(record));
    }

    private static UsageException NoNeed(Crop crop, string how) => new($"no heat from planting to emergence is known for {crop.Name}; give one with {how}.");

    private static double? Positive(double? value, string option) => value is null or > 0 and < double.PositiveInfinity
        ? value
        : throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"{option} is {value}; a number above 0 was expected."));

    private static void Draw(string path, ForecastPlan plan, IReadOnlyList<EmergenceForecast> forecasts)
    {
        var title = forecasts is [var one]
            ? string.Create(CultureInfo.InvariantCulture, $"Emergence of {plan.Crop.Name} planted {one.Planted:yyyy-MM-dd}")
            : string.Create(CultureInfo.InvariantCulture, $"Emergence of {plan.Crop.Name} planted {forecasts[0].Planted:yyyy-MM-dd} to {forecasts[^1].Planted:yyyy-MM-dd}");
        var table = new Table(
            title,
            [new("Planted"), new("Earliest"), new("Middle"), new("Latest")],
            [.. forecasts.Select(each => TableRow.Of(ForecastPrinter.Date(each.Planted), ForecastWords.When(each, each.Low), ForecastWords.When(each, each.Mid), ForecastWords.When(each, each.High)))]);
        var words = string.Join("; ", forecasts.Take(3).Select(each => $"planted {ForecastPrinter.Date(each.Planted)}: {ForecastWords.When(each, each.Low)} to {ForecastWords.When(each, each.High)}"));
        IFigure figure = forecasts is [{ Clock.Days.Length: > 1 } single]
            ? OfOne(single, words)
            : new PlantingWindowFigure([.. forecasts.Select(each => new WindowRow(each.Planted, each.Low?.Date, each.Mid?.Date, each.High?.Date))], words);
        FigureFile.Write(path, figure, title, [.. ForecastWords.Need(plan.Need, plan.CountsPlantingDay), .. forecasts.Select(ForecastWords.Short).OfType<string>(), $"Temperatures of the {(plan.IsSoil ? "soil" : "air")}: {plan.Source}."], table, plan.Source);
    }

    private static HeatFigure OfOne(EmergenceForecast forecast, string words)
    {
        var end = forecast.High?.Date.AddDays(1) ?? forecast.LastDay;
        HeatEvent?[] events = [Event(forecast.Low, "earliest emergence"), Event(forecast.Mid, "emergence"), Event(forecast.High, "latest emergence")];
        var days = forecast.Clock.Days.Where(day => day.Date <= end).Select(day => new HeatDay(day.Date, day.Heat.FahrenheitDays)).ToArray();
        return new("F-days", days.Length > 1 ? days : [.. forecast.Clock.Days.Take(2).Select(day => new HeatDay(day.Date, day.Heat.FahrenheitDays))], [.. events.OfType<HeatEvent>()], words);
    }

    private static HeatEvent? Event(ForecastDate? date, string text) => date is null ? null : new(date.Date, $"{text} ({ForecastWords.Kind(date.Kind)})");
}
