using System.Globalization;
using TrialKit.Planning;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Words;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Sheets;

/// <summary>The paper that goes to the field: planting record, stand counts, visits, plants along the tape, harvest.</summary>
public static class FieldSheets
{
    private const int VisitColumns = 6;
    private const int PlantLines = 20;

    /// <summary>The sheets as plain data.</summary>
    /// <param name="trial">The trial, with strips.</param>
    /// <param name="settings">Paper and visits.</param>
    /// <exception cref="ArgumentException">The trial has no strips yet.</exception>
    public static ReportDocument Of(StripTrial trial, SheetSettings settings)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(settings);
        if (trial.Strips.IsEmpty)
        {
            throw new ArgumentException("The trial has no strips; sheets are made for one strip or more.", nameof(trial));
        }

        return new(
            trial.Title,
            $"Field sheets: {trial.Title}",
            "en-US",
            settings.PageSize,
            new ReportFooter($"TrialKit {Library.Version}", Fingerprint.Of(settings.Inputs)),
            [
                .. Planting(trial),
                new PageBreak(),
                .. Stand(trial),
                new PageBreak(),
                .. Visits(trial, settings),
                new PageBreak(),
                .. Plants(trial),
                new PageBreak(),
                .. Harvest(trial),
            ]);
    }

    private static IEnumerable<Block> Planting(StripTrial trial)
    {
        yield return new Heading(1, trial.Title);
        yield return new KeyFacts(
        [
            new("Crop", trial.Crop.Name),
            new("Layout", TrialWords.Layout(trial)),
            .. trial.PlanSeed is { } seed ? [new KeyFact("Drawn with seed", seed.ToString(CultureInfo.InvariantCulture))] : Array.Empty<KeyFact>(),
        ]);
        yield return new Heading(2, "Planting record");
        yield return new Paragraph("Plant the strips as they are listed. Write down what happened, above all where it was not as planned: a strip that got the other treatment is no loss when the record says so.");
        yield return new FormGrid(
            [new("Strip", 1), new("Block", 0.9), new("Treatment", 2.6), new("Planter", 2.6), new("Done, time", 1.6), new("What was different", 3)],
            [.. FieldWalk.Strips(trial).Select(strip => (string[])[strip.Name, strip.Block, strip.Treatment.Label, strip.Note ?? string.Empty, string.Empty, string.Empty])]);
        yield return new Paragraph("Planted on ______________    by ______________    seed lot ______________");
    }

    private static IEnumerable<Block> Stand(StripTrial trial)
    {
        var area = trial.Units == UnitSystem.Us ? "an acre" : "a hectare";
        var row = PlantDensity.RowOfThousandth(trial.Planting.RowSpacing, trial.Units);
        yield return new Heading(2, "Stand counts");
        yield return FieldWalk.Stops(trial).All(stop => stop.Rows == 1 && LengthText.Row(stop.Row, trial.Units) == LengthText.Row(row, trial.Units))
            ? new Paragraph(RichText.Of($"A thousandth of {area} is ").Then($"{LengthText.Row(row, trial.Units)} of one row", Emphasis.Strong).Then($" at this row spacing: plants counted along it, times 1,000, are plants {area}."), TextSize.Lead)
            : new Paragraph("Count along the length of row that is given for each place.", TextSize.Lead);
        yield return new Paragraph("Count at the places listed, not where the stand looks typical. Treatments are left off this sheet on purpose. Row 1 is the left row of the planter as it was driven.");
        yield return new FormGrid(
            [.. PlaceColumns(trial), new("Row to count", 1.6), new("Plants", 1.5), new("Date", 1.5), new("Note", 2)],
            [.. FieldWalk.Stops(trial).Select(stop => (string[])[.. Place(stop, trial), Counted(stop, trial.Units), string.Empty, string.Empty, string.Empty])]);
    }

    private static IEnumerable<Block> Visits(StripTrial trial, SheetSettings settings)
    {
        yield return new Heading(2, "Visits");
        var stops = FieldWalk.Stops(trial);
        var lengths = stops.Select(stop => LengthText.Row(stop.Watched, trial.Units)).Distinct(StringComparer.Ordinal).ToArray();
        yield return new Paragraph(
            lengths.Length == 1
                ? RichText.Of("At each visit count every plant that stands along ").Then($"{lengths[0]} of row", Emphasis.Strong).Then(" from the place listed.")
                : RichText.Of("At each visit count every plant that stands along the length of row given for the place."),
            TextSize.Lead);
        yield return new Paragraph("Nothing up is 0, not a blank. Begin before the first plant is up; write the date and the hour at the head of the column.");
        FormColumn[] places = [.. PlaceColumns(trial), .. lengths.Length == 1 ? Array.Empty<FormColumn>() : [new("Row", 1.1)]];
        var dates = Enumerable.Range(0, Math.Max(VisitColumns, settings.Visits.Length)).Select(i => i < settings.Visits.Length ? NumberText.ShortDate(settings.Visits[i]) : $"Visit {NumberText.Count(i + 1)}");
        foreach (var columns in dates.Chunk(VisitColumns))
        {
            var blanks = Blank(columns.Length).ToArray();
            yield return new FormGrid(
                [.. places, .. columns.Select(date => new FormColumn(date, 1.25))],
                [
                    ["Date, hour", .. Blank(places.Length - 1), .. blanks],
                    .. stops.Select(stop => (string[])[.. Place(stop, trial), .. lengths.Length == 1 ? Array.Empty<string>() : [LengthText.Row(stop.Watched, trial.Units)], .. blanks]),
                ]);
        }
    }

    private static IEnumerable<Block> Plants(StripTrial trial)
    {
        var unit = trial.Units == UnitSystem.Us ? "in" : "cm";
        yield return new Heading(2, "Plants along the tape");
        yield return new Paragraph("Strip ____________    Spot ________    Planter row ________    Date ____________");
        yield return new Paragraph("One line for each plant from the spot's zero on. Note d (double) for the second plant of two seeds dropped at one place, v for a volunteer, x for a plant that died; the tables take the letter or the word. Copy this page for each spot.");
        FormColumn[] half = [new("No.", 0.7), new($"Position, {unit}", 1.45), new("First seen", 1.15), new("Collars", 1.3), new($"Depth, {unit}", 1.1), new("Note", 0.9)];
        yield return new FormGrid(
            [.. half, .. half],
            [.. Enumerable.Range(1, PlantLines).Select(line => (string[])[NumberText.Count(line), .. Blank(half.Length - 1), NumberText.Count(line + PlantLines), .. Blank(half.Length - 1)])]);
    }

    private static IEnumerable<Block> Harvest(StripTrial trial)
    {
        var (weight, length, density) = trial.Units == UnitSystem.Us ? ("lb", "ft", "lb/bu") : ("kg", "m", "kg/hl");
        yield return new Heading(2, "Harvest");
        yield return new Paragraph("Weigh each strip by itself, and measure again what was cut: length and width as harvested, not as planted. Take the moisture of each strip from its own sample.");
        yield return new FormGrid(
            [new("Strip", 1), new($"Length cut, {length}", 1.4), new($"Width cut, {length}", 1.4), new($"Weight, {weight}", 1.7), new("Moisture, %", 1.4), new($"Test weight, {density}", 1.4), new("Note", 2.2)],
            [.. FieldWalk.Strips(trial).Select(strip => (string[])[strip.Name, .. Blank(6)])]);
    }

    // In a strip of several passes a row of the planter is there several times over.
    private static bool NamesPass(StripTrial trial) => trial.Field is { PassesPerStrip: > 1 };

    private static IEnumerable<FormColumn> PlaceColumns(StripTrial trial) =>
        [new("Strip", 1), new("Spot", 0.8), new("From the near end", 1.4), .. NamesPass(trial) ? [new FormColumn("Pass", 0.8)] : Array.Empty<FormColumn>(), new("Planter row", 1.1)];

    private static string Counted(WalkStop stop, UnitSystem units) =>
        stop.Rows == 1 ? LengthText.Row(stop.Row, units) : $"{NumberText.Count(stop.Rows)} rows of {LengthText.Row(stop.Row, units)}";

    private static IEnumerable<string> Place(WalkStop stop, StripTrial trial) =>
    [
        stop.Strip.Name,
        stop.Spot,
        stop.FromStart is { } from ? LengthText.Distance(from, trial.Units) : string.Empty,
        .. NamesPass(trial) ? [stop.Pass is { } pass ? NumberText.Count(pass) : string.Empty] : Array.Empty<string>(),
        stop.PlanterRow is { } row ? NumberText.Count(row) : string.Empty,
    ];

    private static IEnumerable<string> Blank(int count) => Enumerable.Repeat(string.Empty, count);
}
