using TrialKit.Planning;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Sheets;

/// <summary>The workbook that is filled in after a day in the field and stands in for the trial's tables.</summary>
public static class FieldWorkbook
{
    private const int Decimals = 3;

    private static readonly SheetColumn Strip = new("strip", SheetCell.Strip, "The strip, from the list.");

    /// <summary>Writes the workbook: strips, stand-counts, emergence, plants and harvest, with strips to choose from and a note at the head of each column.</summary>
    /// <param name="trial">The trial, with strips.</param>
    /// <param name="settings">Visits that are known.</param>
    /// <param name="stream">Where to; it stays open.</param>
    /// <exception cref="ArgumentException">The trial has no strips yet.</exception>
    public static void Write(StripTrial trial, SheetSettings settings, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(stream);
        if (trial.Strips.IsEmpty)
        {
            throw new ArgumentException("The trial has no strips; a workbook is made for one strip or more.", nameof(trial));
        }

        var stops = FieldWalk.Stops(trial);
        var strips = FieldWalk.Strips(trial);
        WorkbookSheet[] sheets =
        [
            Strips(trial, strips),
            Stand(trial, stops),
            Emergence(trial, settings, stops),
            Plants(trial.Units),
            Harvest(trial.Units, strips),
        ];
        WorkbookParts.Write(sheets, [.. strips.Select(strip => strip.Name)], stream);
    }

    // The planting record: what was drawn, to be put right where it came out otherwise.
    private static WorkbookSheet Strips(StripTrial trial, IEnumerable<Strip> strips) => new(
        "strips",
        [
            new("strip", SheetCell.Text, "The strip, one in each row."),
            new("block", SheetCell.Text, "The pair or block it belongs to."),
            new("treatment", SheetCell.Text, "What it got. If that was another than planned, write what it got.", 24),
            new("order", SheetCell.Count, "Place across the field."),
            new($"length_{LengthUnit(trial.Units)}", SheetCell.Number, "Length of the strip."),
            new($"width_{LengthUnit(trial.Units)}", SheetCell.Number, "Width of the strip."),
            new("rows", SheetCell.Count, "Rows in the strip."),
            new("planted", SheetCell.Date, "The day it was planted, where it was another than the trial's.", 18),
            new("left_out", SheetCell.Text, "Why it takes no part in the analysis, when it is to take none.", 24),
            new("note", SheetCell.Text, "What was different, and whatever you like.", 24),
        ],
        [.. strips.Select(strip => (object?[])
        [
            strip.Name, strip.Block, strip.Treatment.Name, strip.Order,
            strip.Length is { } length ? Length(length, trial.Units) : null, strip.Width is { } width ? Length(width, trial.Units) : null, strip.Rows,
            strip.Planted == trial.Planting.Date ? null : strip.Planted.ToDateTime(TimeOnly.MinValue), strip.LeftOut, strip.Note,
        ])]);

    private static WorkbookSheet Stand(StripTrial trial, IEnumerable<WalkStop> stops) => new(
        "stand-counts",
        [
            Strip,
            new("spot", SheetCell.Text, "The spot within the strip."),
            new("date", SheetCell.Date, "The day of the count.", 18),
            new($"length_{LengthUnit(trial.Units)}", SheetCell.Number, "Length of the row that was counted."),
            new("plants", SheetCell.Count, "Plants counted along it. Leave it empty where nobody counted; nothing there is 0."),
            new("rows", SheetCell.Count, "Rows of that length that were counted together."),
            new("planter_row", SheetCell.Count, "The row of the planter, from its left."),
            new("note", SheetCell.Text, "Whatever you like.", 24),
        ],
        [.. stops.Select(stop => (object?[])[stop.Strip.Name, stop.Spot, null, Length(stop.Row, trial.Units), null, stop.Rows, stop.PlanterRow, null])]);

    private static WorkbookSheet Emergence(StripTrial trial, SheetSettings settings, IReadOnlyList<WalkStop> stops) => new(
        "emergence",
        [
            Strip,
            new("spot", SheetCell.Text, "The spot within the strip."),
            new("date", SheetCell.Date, "Day and hour of the visit. A day alone is read as the midnight that begins it: give the hour.", 18),
            new("plants", SheetCell.Count, "All plants standing at this visit, not only the new ones. A visit that found nothing is a 0."),
            new($"length_{LengthUnit(trial.Units)}", SheetCell.Number, "Length of the row that was watched."),
        ],
        [.. settings.Visits.SelectMany(visit => stops.Select(stop => (object?[])[stop.Strip.Name, stop.Spot, visit.ToDateTime(TimeOnly.MinValue), null, Length(stop.Watched, trial.Units)]))]);

    private static WorkbookSheet Plants(UnitSystem units)
    {
        var unit = units == UnitSystem.Us ? "in" : "cm";
        return new(
            "plants",
            [
                Strip,
                new("spot", SheetCell.Text, "The spot; it must be one of the sheet stand-counts or emergence."),
                new("plant", SheetCell.Text, "Number or name of the plant in its spot."),
                new($"position_{unit}", SheetCell.Number, "Place on the tape, from the spot's zero."),
                new("first_seen", SheetCell.Date, "The visit at which it was there first.", 18),
                new("collars", SheetCell.Number, "Leaf collars, when counted."),
                new($"depth_{unit}", SheetCell.Number, "Seed depth, when dug."),
                new("note", SheetCell.Text, "double, volunteer or died, or d, v or x, when it is one; else what you like.", 24),
            ],
            []);
    }

    private static WorkbookSheet Harvest(UnitSystem units, IEnumerable<Strip> strips) => new(
        "harvest",
        [
            Strip,
            new($"weight_{(units == UnitSystem.Us ? "lb" : "kg")}", SheetCell.Number, "Weight of the grain of this strip."),
            new("moisture_pct", SheetCell.Moisture, "Moisture of its own sample, in percent."),
            new($"length_{LengthUnit(units)}", SheetCell.Number, "Length that was cut, where it is not the strip's own."),
            new($"width_{LengthUnit(units)}", SheetCell.Number, "Width that was cut, where it is not the strip's own."),
            new($"test_weight_{(units == UnitSystem.Us ? "lb_bu" : "kg_hl")}", SheetCell.Number, "Test weight of its sample, when taken."),
            new("note", SheetCell.Text, "Whatever you like.", 24),
        ],
        [.. strips.Select(strip => (object?[])[strip.Name, null, null, null, null, null, null])]);

    private static string LengthUnit(UnitSystem units) => units == UnitSystem.Us ? "ft" : "m";

    private static double Length(Length length, UnitSystem units) => Math.Round(units == UnitSystem.Us ? length.Feet : length.Meters, Decimals);
}
