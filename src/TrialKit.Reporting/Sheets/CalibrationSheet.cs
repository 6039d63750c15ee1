using System.Collections.Immutable;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Words;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Sheets;

/// <summary>A sheet for the catch test of a planter: what each row's jug should hold, and boxes to write in what it held.</summary>
public static class CalibrationSheet
{
    /// <summary>The most rows of a planter that a sheet is made for.</summary>
    public const int MostRows = 120;

    private static readonly string[] WrittenIn = ["Date of the test", "Done by (name)", "Pressure read", "Lot of the product"];

    /// <summary>The sheet as plain data: one part for each liquid and placement.</summary>
    /// <param name="title">What it is about.</param>
    /// <param name="flows">The liquids, one or more.</param>
    /// <param name="rows">Rows of the planter, from 1 to <see cref="MostRows"/>.</param>
    /// <param name="units">The units printed.</param>
    /// <param name="size">The sheet of paper.</param>
    /// <param name="inputs">The files it was made from; empty when there are none.</param>
    public static ReportDocument Of(string title, ImmutableArray<StreamFlow> flows, int rows, UnitSystem units, PageSize size, IReadOnlyList<ReportInput> inputs)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rows, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(rows, MostRows);
        if (flows.IsDefaultOrEmpty)
        {
            throw new ArgumentException("No liquid was found; one or more were expected.", nameof(flows));
        }

        return new(
            title,
            "Catch test: what each row's jug should hold, and what it held",
            "en-US",
            size,
            new ReportFooter($"TrialKit {Library.Version}", Fingerprint.Of(inputs)),
            [.. flows.SelectMany((flow, index) => Part(title, flow, index, rows, units))]);
    }

    private static IEnumerable<Block> Part(string title, StreamFlow flow, int index, int rows, UnitSystem units)
    {
        if (index > 0)
        {
            yield return new PageBreak();
        }

        yield return new Heading(index == 0 ? 1 : 2, index == 0 ? title : $"{flow.Treatment.Label}, {Placements.NameOf(flow.Placed.Placement)}");
        yield return new KeyFacts(
        [
            new("Liquid", flow.Placed.Product.Name),
            new("Placement", Placements.WordsOf(flow.Placed.Placement)),
            new("Rate", RateText.PerArea(flow.Placed.Rate, units)),
            new("Speed", RateText.Speed(flow.Settings.Speed, units)),
            new("Flow of a row", RateText.Flow(flow.PerRow, units)),
        ]);
        foreach (var hazard in FurrowHazards.In(flow.Placed.Product).Where(hazard => hazard.IsNever && flow.Placed.Placement == Placement.InFurrow))
        {
            yield return new Note(NoteWeight.Grave, "Never in the furrow", StarterWords.Hazard(flow.Placed.Product, hazard));
        }

        foreach (var caution in CautionNotes.All())
        {
            yield return caution;
        }

        yield return new Paragraph(StarterWords.Flow(flow, units), TextSize.Small);
        yield return new Paragraph("Shut the planter down and lock it out before you hang or take jugs. Wear what the label asks for. Run the pump at the speed and pressure of planting, catch all outlets of a row in one jug, and write down what each held.");
        yield return new Table(
            "Expected in the jug of one row",
            [new("Seconds", Alignment: ColumnAlignment.Right), new("Expected", "mL", ColumnAlignment.Right), new("Passes from", "mL", ColumnAlignment.Right), new("to", "mL", ColumnAlignment.Right), new("Expected with water", "mL", ColumnAlignment.Right)],
            [.. flow.Catches.Select(test => TableRow.Of(
                NumberText.Number(test.Seconds, 0),
                RateText.Millilitres(test.Expected),
                RateText.Millilitres(test.Low),
                RateText.Millilitres(test.High),
                flow.WaterFactor is { } factor ? NumberText.Number(test.Expected.Milliliters * factor, 0) : NumberText.Dash))],
            $"{NumberText.Percent(CatchTest.Tolerance)} to either side passes (common practice, no source). Water stands for the liquid through the same outlets at the same pressure, not on a positive-displacement pump.");
        yield return new Table(
            "This test",
            [.. WrittenIn.Select(column => new TableColumn(column, Alignment: ColumnAlignment.Centre))],
            [new(WrittenIn.Select(_ => "").ToArray())])
        {
            IsForm = true,
        };
        yield return new Table(
            "Caught",
            [new("Row", Alignment: ColumnAlignment.Right), new("Seconds", Alignment: ColumnAlignment.Centre), new("First catch", "mL", ColumnAlignment.Centre), new("Second catch", "mL", ColumnAlignment.Centre), new("After mending", "mL", ColumnAlignment.Centre), new("What was done", Alignment: ColumnAlignment.Centre)],
            [.. Enumerable.Range(1, rows).Select(row => TableRow.Of(NumberText.Count(row), "", "", "", "", ""))])
        {
            IsForm = true,
        };
    }
}
