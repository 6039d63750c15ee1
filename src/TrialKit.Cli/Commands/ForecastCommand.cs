using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Heat;
using TrialKit.Trials;

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
    private readonly Option<bool> quiet = CommonOptions.Quiet();
    private readonly ForecastOptions options = new();
    private readonly WeatherArguments weather = new();
    private readonly Terminal terminal;

    private ForecastCommand(Terminal terminal) => this.terminal = terminal;

    public static Command Create(Terminal terminal)
    {
        var made = new ForecastCommand(terminal);
        var command = new Command("forecast", "Tell when a crop emerges from the heat after planting: for a trial, for a planting date, or for each date of a window.")
        {
            made.folder, made.file, made.crop, made.planted, made.from, made.to, made.quiet,
        };
        made.options.AddTo(command);
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
            ForecastDrawing.Write(figure, plan, forecasts);
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

        if (weather.Record.Given(parsed).FirstOrDefault() is { } own)
        {
            throw new UsageException($"{own} is for --weather; how a trial folder's weather is read stands in its trial.toml under [weather].");
        }

        if (TrialFolder.Read(path, terminal, eachWarning: false).Trial is not { } trial)
        {
            return null;
        }

        var record = trial.SoilTemperature ?? trial.Weather ?? throw new UsageException($"the trial in '{path}' has no temperatures; weather.csv was expected.");
        if (weather.Fill(parsed) is > 0 and var longest)
        {
            record = record.FillGaps(longest);
        }

        return Plan(
            trial.Crop,
            trial.Heat.Method,
            options.HasNeed(parsed) ? "given by --need" : "trial.toml",
            (record, trial.SoilTemperature is not null),
            trial.Forecast,
            WeatherArguments.Date(parsed.GetValue(planted), "--planted") ?? trial.Planting.Date,
            trial.Heat.CountPlantingDay,
            parsed);
    }

    private ForecastPlan? OfOptions(ParseResult parsed)
    {
        if (parsed.GetValue(file) is not { } record || parsed.GetValue(crop) is not { } name)
        {
            throw new UsageException("a trial folder was expected, or --weather FILE with --crop NAME.");
        }

        var known = CropTable.Find(name) ?? throw new UsageException($"'{name}' is no crop that is built in; one of {string.Join(", ", CropTable.Crops.Select(each => each.Name))} was expected.");
        return weather.Read(record, weather.Record, parsed, terminal, parsed.GetValue(quiet)) is { } series
            ? Plan(
                known,
                known.Heat,
                "given by --need",
                (series, weather.Record.ReadsSoil(parsed)),
                new ForecastSettings(),
                WeatherArguments.Date(parsed.GetValue(planted), "--planted"),
                countPlantingDay: true,
                parsed)
            : null;
    }

    private ForecastPlan? Plan(Crop grown, HeatMethod method, string givenBy, (TemperatureSeries Series, bool IsSoil) record, ForecastSettings own, DateOnly? day, bool countPlantingDay, ParseResult parsed)
    {
        if (options.Over(own, parsed, weather, terminal, parsed.GetValue(quiet)) is not { } settings)
        {
            return null;
        }

        var need = HeatNeeds.Of(grown, method, settings, givenBy)
            ?? throw new UsageException($"no heat from planting to emergence is known for {grown.Name}; give one with --need F-DAYS, or as need = \"115 F-days\" under [forecast] in trial.toml.");
        return new(grown, need, ForecastDays.Of(record.Series, record.IsSoil, settings), day, countPlantingDay && !options.SkipsPlantingDay(parsed), settings.Conditions.Depth);
    }
}
