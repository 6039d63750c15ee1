using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using TrialKit.Planning;
using TrialKit.Reporting.Document;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Sheets;

/// <summary>A page for a phone that takes counts, visits and plants without a network and hands them out as the tables of the trial.</summary>
public static partial class FieldPage
{
    private const string Template = "TrialKit.Reporting.Sheets.FieldPage.html";
    private const string Marker = "/*TRIAL*/null";
    private const int Decimals = 3;
    private const int IdLength = 16;

    /// <summary>Writes the page, whole in one file.</summary>
    /// <param name="trial">The trial, with strips.</param>
    /// <param name="stream">Where to; it stays open.</param>
    /// <exception cref="ArgumentException">The trial has no strips yet.</exception>
    public static void Write(StripTrial trial, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(stream);
        if (trial.Strips.IsEmpty)
        {
            throw new ArgumentException("The trial has no strips; the page is made for one strip or more.", nameof(trial));
        }

        // The serialiser writes < and > as escapes, so that no name can end the script.
        var json = JsonSerializer.Serialize(Of(trial), PageJson.Default.PageTrial);
        stream.Write(Encoding.UTF8.GetBytes(Text().Replace(Marker, json, StringComparison.Ordinal)));
    }

    private static PageTrial Of(StripTrial trial)
    {
        var us = trial.Units == UnitSystem.Us;
        var namesPass = trial.Field is { PassesPerStrip: > 1 };
        PageStop[] stops = [.. FieldWalk.Stops(trial).Select(stop => new PageStop(
            stop.Strip.Name,
            stop.Spot,
            stop.FromStart is { } from ? LengthText.Distance(from, trial.Units) : null,
            namesPass ? stop.Pass : null,
            stop.PlanterRow,
            Along(stop.Row, stop.Rows),
            Along(stop.Watched, 1),
            stop.Rows,
            stop.Strip.Planted.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)))];
        return new(Id(trial, stops), trial.Title, us ? "ft" : "m", us ? "in" : "cm", stops);

        PageRow Along(Length row, int rows) => new(
            Math.Round(us ? row.Feet : row.Meters, Decimals),
            rows == 1 ? LengthText.Row(row, trial.Units) : $"{NumberText.Count(rows)} rows of {LengthText.Row(row, trial.Units)}",
            trial.Planting.Seeds is { } rate ? Math.Round(rows * rate.SeedsAlong(row, trial.Planting.RowSpacing), 1) : null);
    }

    // Entries are kept under the plan, whose mark changes when strips are drawn anew and not when a date or a title does; without
    // one, under the trial and its strips.
    private static string Id(StripTrial trial, IEnumerable<PageStop> stops)
    {
        var text = trial.PlanId ?? string.Join('\n', [trial.Title, .. stops.Select(stop => stop.Strip).Distinct(StringComparer.Ordinal)]);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..IdLength];
    }

    private static string Text()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Template)
            ?? throw new InvalidOperationException($"The resource {Template} is missing from the assembly.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    private sealed record PageRow(double Length, string Along, double? Seeds);

    private sealed record PageStop(string Strip, string Spot, string? From, int? Pass, int? Row, PageRow Stand, PageRow Visit, int Rows, string Planted);

    private sealed record PageTrial(string Id, string Title, string Unit, string Tape, IReadOnlyList<PageStop> Stops);

    [JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
    [JsonSerializable(typeof(PageTrial))]
    private sealed partial class PageJson : JsonSerializerContext;
}
