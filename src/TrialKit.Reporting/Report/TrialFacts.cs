using System.Globalization;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Report;

/// <summary>The line of facts under the question.</summary>
internal static class TrialFacts
{
    /// <summary>The name of the fact that gives the level.</summary>
    public const string Level = "Level";

    public static IReadOnlyList<KeyFact> Of(StripTrial trial)
    {
        var facts = new List<KeyFact>
        {
            new("Crop", trial.Crop.Name),
            new("Planted", Planted(trial)),
            new("Layout", TrialWords.Layout(trial)),
        };
        if (Size(trial) is { } size)
        {
            facts.Add(new("Strips", size));
        }

        if (Visits(trial) is { } visits)
        {
            facts.Add(new("Visits", visits));
        }

        facts.Add(new(Level, NumberText.Level(trial.Design.Level.Alpha)));
        return facts;
    }

    private static string Planted(StripTrial trial)
    {
        var (first, last) = (trial.Strips.Min(strip => strip.Planted), trial.Strips.Max(strip => strip.Planted));
        return first == last ? NumberText.Date(first) : $"{NumberText.ShortDate(first)} to {NumberText.Date(last)}";
    }

    private static string? Size(StripTrial trial)
    {
        var us = trial.Units == UnitSystem.Us;
        var lengths = trial.Strips.Select(strip => us ? strip.Length?.Feet : strip.Length?.Meters).OfType<double>().ToArray();
        var widths = trial.Strips.Select(strip => us ? strip.Width?.Feet : strip.Width?.Meters).OfType<double>().ToArray();
        return lengths.Length == 0 || widths.Length == 0 ? null : $"{Span(lengths)} by {Span(widths)} {(us ? "ft" : "m")}";
    }

    private static string? Visits(StripTrial trial)
    {
        var days = trial.Emergence.SelectMany(spot => spot.Visits).Select(visit => DateOnly.FromDateTime(visit.At)).Distinct().Order().ToArray();
        return days.Length == 0
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"{days.Length}, {NumberText.ShortDate(days[0])} to {NumberText.ShortDate(days[^1])}");
    }

    private static string Span(double[] values) => NumberText.Number(values.Min(), 0) is var low && NumberText.Number(values.Max(), 0) is var high && low == high ? low : $"{low} to {high}";
}
