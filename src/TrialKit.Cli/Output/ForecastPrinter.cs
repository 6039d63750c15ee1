using System.Globalization;
using TrialKit.Cli.Commands;
using TrialKit.Heat;
using TrialKit.Reporting.Words;
using TrialKit.Trials;

namespace TrialKit.Cli.Output;

/// <summary>Prints forecasts of emergence: the heat needed, the dates and the days behind them, and what to look out for.</summary>
internal static class ForecastPrinter
{
    public static void Print(ForecastPlan plan, IReadOnlyList<EmergenceForecast> forecasts, Terminal terminal)
    {
        foreach (var sentence in ForecastWords.Need(plan.Need, plan.CountsPlantingDay).Concat(ForecastWords.Sources(plan.Days)))
        {
            terminal.WriteWrapped(sentence, indent: 0);
        }

        terminal.Out.WriteLine();
        var isCotton = IsCotton(plan);
        ConsoleTable.Print(
            terminal,
            $"Emergence of {plan.Crop.Name}",
            [new("Planted"), new("Earliest"), new("Middle"), new("Latest"), .. isCotton ? [new ConsoleColumn("Conditions")] : Array.Empty<ConsoleColumn>()],
            forecasts.Select(each => (string[])
            [
                Date(each.Planted), Cell(each, each.Low), Cell(each, each.Mid), Cell(each, each.High),
                .. isCotton ? [Cotton(plan, each)] : Array.Empty<string>(),
            ]));
        foreach (var sentence in Notes(plan, forecasts))
        {
            terminal.WriteWrapped(sentence, indent: 2);
        }

        var cautions = forecasts
            .SelectMany(each => PlantingCautions.Of(plan.Crop, plan.Days, each.Planted, plan.Depth), (each, caution) => (each.Planted, caution.Finding, caution.Kind))
            .GroupBy(entry => (entry.Finding.Id, entry.Kind));
        foreach (var kind in cautions)
        {
            var dates = kind.Select(entry => entry.Planted).ToArray();
            terminal.WriteWrapped(
                kind.First().Finding.Message + (dates.Length == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" The like holds for {dates.Length} of the {forecasts.Count} planting dates, {Date(dates[0])} to {Date(dates[^1])}.")),
                indent: 2);
        }
    }

    /// <summary>What is to be said of the dates as a whole.</summary>
    public static IEnumerable<string> Notes(ForecastPlan plan, IReadOnlyList<EmergenceForecast> forecasts) =>
        new[] { ForecastWords.Key(forecasts) }
            .Concat(ForecastWords.Short(forecasts, plan.Days))
            .Append(ForecastWords.BySingle(forecasts))
            .OfType<string>();

    /// <summary>A foretold date with the days below it that were not observed.</summary>
    public static string Cell(EmergenceForecast forecast, ForecastDate? date) =>
        ForecastWords.When(forecast, date) + (ForecastWords.RestsOn(date) is { } days ? "\n" + days : "");

    /// <summary>Whether the crop has the planting conditions of cotton.</summary>
    public static bool IsCotton(ForecastPlan plan) => Identifier.Same(plan.Crop.Name, "cotton");

    /// <summary>The planting conditions of cotton.</summary>
    public static string Cotton(ForecastPlan plan, EmergenceForecast forecast) => ForecastWords.Cotton(CottonOutlook.Of(plan.Days, forecast.Planted));

    /// <summary>A date as tables write it.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
