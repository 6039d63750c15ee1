using System.Globalization;
using TrialKit.Reporting.Document;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Words;

/// <summary>What is put near the seed, in sentences.</summary>
public static class StarterWords
{
    /// <summary>What the orifice law does not hold for.</summary>
    public const string OrificeLimits = "The pressure follows the orifice law: flow goes as the square root of pressure. It does not hold across check valves nor for viscous products; the catch test decides.";

    /// <summary>How one placement stands to one source.</summary>
    public static string Screen(ScreenLine line, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(line);
        var place = Capital(Placements.WordsOf(line.Placement));
        return line.Verdict switch
        {
            ScreenVerdict.NotCovered => $"{place}: not covered by {Source(line)}: {line.Reason}.",
            ScreenVerdict.SoilNotKnown => $"{place}: the limit of {Source(line)} depends on the soil, which is not known here: give {line.Reason}.",
            ScreenVerdict.AmountNotKnown => $"{place}: the limit of {Source(line)} was not applied: {line.Reason}.",
            _ => $"{place}: {RateText.Pounds(line.PoundsPerAcre!.Value, units)} of {line.Limit!.SumWords}, {Against(line, units)} of {Source(line)} ({Terms(line)}).",
        };
    }

    /// <summary>What is in the seed furrow and should not be.</summary>
    public static string Hazard(Product product, FurrowHazard hazard)
    {
        ArgumentNullException.ThrowIfNull(product);
        ArgumentNullException.ThrowIfNull(hazard);
        return hazard.IsNever
            ? $"{product.Name}: never put {hazard.What} into the seed furrow; {hazard.Reason} ({hazard.Source})."
            : $"{product.Name}: be wary of {hazard.What} in the seed furrow; it {hazard.Reason} ({hazard.Source}).";
    }

    /// <summary>The flow of one row and what it takes to set it.</summary>
    public static string Flow(StreamFlow flow, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(flow);
        var text = $"{flow.Treatment.Label}, {flow.Placed.Product.Name}, {Placements.NameOf(flow.Placed.Placement)}: {RateText.Flow(flow.PerRow, units)} a row at {RateText.Speed(flow.Settings.Speed, units)}";
        text += flow.Outlets.Length > 1 ? $", {string.Join(" and ", flow.Outlets.Select(outlet => NumberText.Figures(outlet.MillilitersPerMinute, 3)))} mL/min from its {NumberText.Count(flow.Outlets.Length)} outlets." : ".";
        if (flow is { WaterFactor: { } factor, WaterPerRow: { } water })
        {
            text += $" With water through the same outlets, set {RateText.Flow(water, units)} ({NumberText.Number(factor, 2)} times); a positive-displacement pump needs no such correction.";
        }

        return flow is { Settings.Pressure: { } now, PressureForQuarterMore: { } more }
            ? $"{text} A quarter more speed at the same rate needs {RateText.Pressure(more, units)} in place of {RateText.Pressure(now, units)}."
            : text;
    }

    private static string Against(ScreenLine line, UnitSystem units) => (line.Verdict, line.Limit!.PoundsPerAcre) switch
    {
        (_, 0) => "where none is the limit",
        (ScreenVerdict.Over, var limit) => $"over the {RateText.Pounds(limit, units)}",
        (_, var limit) => $"not over the {RateText.Pounds(limit, units)}",
    };

    private static string Terms(ScreenLine line) => string.Join(
        ", ",
        new[] { line.Limit!.Crop, line.Limit.Soil == LimitSoil.Any ? null : line.Limit.SoilWords, line.Reason, line.Limit.IsFromMemory ? "value from memory" : null }.OfType<string>());

    private static string Source(ScreenLine line) => line.Source.Year is { } year ? string.Create(CultureInfo.InvariantCulture, $"{line.Source.Name} of {year}") : line.Source.Name;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
