using System.Globalization;
using TrialKit.Cli.Commands;
using TrialKit.Heat;
using TrialKit.Reporting.Words;
using TrialKit.Trials;

namespace TrialKit.Cli.Output;

/// <summary>Prints forecasts of emergence: the heat needed, the dates, and what to look out for.</summary>
internal static class ForecastPrinter
{
    public static void Print(ForecastPlan plan, IReadOnlyList<EmergenceForecast> forecasts, Terminal terminal)
    {
        foreach (var sentence in ForecastWords.Need(plan.Need, plan.CountsPlantingDay))
        {
            terminal.WriteWrapped(sentence, indent: 0);
        }

        terminal.WriteWrapped($"Temperatures of the {(plan.IsSoil ? "soil" : "air")}: {plan.Source}.", indent: 0);
        terminal.Out.WriteLine();
        var isCotton = Identifier.Same(plan.Crop.Name, "cotton");
        ConsoleTable.Print(
            terminal,
            $"Emergence of {plan.Crop.Name}",
            [new("Planted"), new("Earliest"), new("Middle"), new("Latest"), .. isCotton ? [new ConsoleColumn("Conditions")] : Array.Empty<ConsoleColumn>()],
            forecasts.Select(each => (string[])
            [
                Date(each.Planted), ForecastWords.When(each, each.Low), ForecastWords.When(each, each.Mid), ForecastWords.When(each, each.High),
                .. isCotton ? [ForecastWords.Cotton(CottonOutlook.Of(plan.Days.Series, each.Planted))] : Array.Empty<string>(),
            ]));
        foreach (var sentence in forecasts.Select(ForecastWords.Short).OfType<string>())
        {
            terminal.WriteWrapped(sentence, indent: 2);
        }

        var cautions = forecasts
            .SelectMany(each => PlantingCautions.Of(plan.Crop, plan.Days.Series, plan.IsSoil, each.Planted, plan.Depth), (each, finding) => (each.Planted, Finding: finding))
            .GroupBy(entry => entry.Finding.Id, StringComparer.Ordinal);
        foreach (var kind in cautions)
        {
            var dates = kind.Select(entry => entry.Planted).ToArray();
            terminal.WriteWrapped(
                kind.First().Finding.Message + (dates.Length == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" The like holds for {dates.Length} of the {forecasts.Count} planting dates, {Date(dates[0])} to {Date(dates[^1])}.")),
                indent: 2);
        }
    }

    /// <summary>A date as tables write it.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
