using System.Globalization;
using TrialKit.Cli.Commands;
using TrialKit.Heat;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;

namespace TrialKit.Cli.Output;

/// <summary>Draws forecasts of emergence: one planting date as heat by day, several as a window.</summary>
internal static class ForecastDrawing
{
    private const int RowsInWords = 3;

    public static void Write(string path, ForecastPlan plan, IReadOnlyList<EmergenceForecast> forecasts)
    {
        var title = forecasts is [var one]
            ? $"Emergence of {plan.Crop.Name} planted {ForecastPrinter.Date(one.Planted)}"
            : $"Emergence of {plan.Crop.Name} planted {ForecastPrinter.Date(forecasts[0].Planted)} to {ForecastPrinter.Date(forecasts[^1].Planted)}";
        var isCotton = ForecastPrinter.IsCotton(plan);
        var table = new Table(
            title,
            [new("Planted"), new("Earliest"), new("Middle"), new("Latest"), .. isCotton ? [new TableColumn("Conditions")] : Array.Empty<TableColumn>()],
            [.. forecasts.Select(each => TableRow.Of([ForecastPrinter.Date(each.Planted), Cell(each, each.Low), Cell(each, each.Mid), Cell(each, each.High), .. isCotton ? [ForecastPrinter.Cotton(plan, each)] : Array.Empty<string>()]))]);
        var words = string.Join("; ", forecasts.Take(RowsInWords).Select(each => $"planted {ForecastPrinter.Date(each.Planted)}: {ForecastWords.When(each, each.Low)} to {ForecastWords.When(each, each.High)}"));
        IFigure figure = forecasts is [{ Clock.Days.Length: > 1 } single]
            ? OfOne(plan, single, words)
            : new PlantingWindowFigure([.. forecasts.Select(each => Row(plan, each))], words);
        FigureFile.Write(path, figure, title, [.. ForecastWords.Need(plan.Need, plan.CountsPlantingDay), .. ForecastWords.Sources(plan.Days), .. ForecastPrinter.Notes(plan, forecasts)], table, plan.Days.Series.Source);
    }

    private static string Cell(EmergenceForecast forecast, ForecastDate? date) => ForecastPrinter.Cell(forecast, date).Replace("\n", "; ", StringComparison.Ordinal);

    private static WindowRow Row(ForecastPlan plan, EmergenceForecast forecast)
    {
        DayKind[] kinds = [];
        if (forecast is { Low: { } low, LastDay: { } counted })
        {
            var last = forecast.High?.Date ?? counted;
            kinds = [.. Enumerable.Range(0, last.DayNumber - low.Date.DayNumber + 1).Select(day => plan.Days.KindOf(low.Date.AddDays(day)) ?? DayKind.Normal)];
        }

        return new(forecast.Planted, forecast.Low?.Date, forecast.Mid?.Date, kinds, forecast.High is not null ? null : ForecastWords.When(forecast, date: null));
    }

    private static HeatFigure OfOne(ForecastPlan plan, EmergenceForecast forecast, string words)
    {
        HeatEvent?[] events = [Event(forecast.Low, "earliest"), Event(forecast.Mid, "middle"), Event(forecast.High, "latest")];
        var shown = forecast.High is { } high ? Math.Max(2, high.Date.DayNumber - forecast.Clock.Days[0].Date.DayNumber + 2) : forecast.Clock.Days.Length;
        return new(
            "F-days",
            [.. forecast.Clock.Days.Take(shown).Select(day => new HeatDay(day.Date, day.Heat.FahrenheitDays, plan.Days.KindOf(day.Date) ?? DayKind.Observed))],
            [.. events.OfType<HeatEvent>()],
            words);
    }

    private static HeatEvent? Event(ForecastDate? date, string text) => date is null
        ? null
        : new(date.Date, date.RestsOn.Uncertain == 0
            ? $"{text} emergence"
            : string.Create(CultureInfo.InvariantCulture, $"{text}: {date.RestsOn.Uncertain} of {date.RestsOn.All} days not observed"));
}
