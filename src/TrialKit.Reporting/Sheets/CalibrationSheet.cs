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

    /// <summary>The sheet as plain data: one part for each placement of a treatment. A planter of eight rows has it on one side of paper.</summary>
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
            [.. flows.GroupBy(flow => (flow.Treatment, flow.Placement)).SelectMany((placement, index) => Part(title, [.. placement], index, rows, units))]);
    }

    /// <summary>The sheet of one placement.</summary>
    /// <param name="title">What the document is about.</param>
    /// <param name="flows">The liquids there; of several, all together last.</param>
    /// <param name="index">The place of the part in the document.</param>
    /// <param name="rows">Rows of the planter.</param>
    /// <param name="units">The units printed.</param>
    private static IEnumerable<Block> Part(string title, StreamFlow[] flows, int index, int rows, UnitSystem units)
    {
        if (index > 0)
        {
            yield return new PageBreak();
        }

        var caught = flows[^1];
        yield return index == 0 ? new Heading(1, title) : new Heading(2, $"{caught.Treatment.Label}, {Placements.NameOf(caught.Placement)}");
        yield return new KeyFacts(
        [
            new("Treatment", caught.Treatment.Label),
            .. caught.Liquids.Select(placed => new KeyFact("Liquid", $"{placed.Product.Name}, {RateText.PerArea(placed.Rate, units)}")),
            new("Placement", Placements.WordsOf(caught.Placement)),
            new("Speed", RateText.Speed(caught.Settings.Speed, units)),
            new("Flow of a row", RateText.Flow(caught.PerRow, units)),
            .. caught.Outlets.Length > 1 ? [new KeyFact("Outlets of a row", StarterWords.Outlets(caught))] : Array.Empty<KeyFact>(),
            .. StarterWords.Pressure(caught, units) is { } pressure ? [new KeyFact("Pressure", pressure)] : Array.Empty<KeyFact>(),
        ]);
        foreach (var placed in caught.Liquids.Where(placed => placed.Placement == Placement.InFurrow))
        {
            foreach (var hazard in FurrowHazards.In(placed.Product).Where(hazard => hazard.IsNever))
            {
                yield return new Note(NoteWeight.Grave, "Never in the furrow", StarterWords.Hazard(placed.Product, hazard));
            }
        }

        foreach (var caution in CautionNotes.Small())
        {
            yield return caution;
        }

        yield return new Paragraph(
            RichText.Of("Shut the planter down and lock it out before you hang or take jugs; wear what the label asks for.", Emphasis.Strong)
                .Then(" Run the pump as in planting, catch all outlets of a row in one jug, and write down what it held."),
            TextSize.Small);
        yield return Expected(flows);
        yield return new Table(
            null,
            [.. WrittenIn.Select(column => new TableColumn(column, Alignment: ColumnAlignment.Centre))],
            [new(WrittenIn.Select(_ => "").ToArray())])
        {
            IsForm = true,
        };
        yield return new Table(
            null,
            [new("Row", Alignment: ColumnAlignment.Right), new("Seconds", Alignment: ColumnAlignment.Centre), new("First catch, mL", Alignment: ColumnAlignment.Centre), new("Second catch, mL", Alignment: ColumnAlignment.Centre), new("After mending, mL", Alignment: ColumnAlignment.Centre), new("What was done", Alignment: ColumnAlignment.Centre)],
            [.. Enumerable.Range(1, rows).Select(row => TableRow.Of(NumberText.Count(row), "", "", "", "", ""))])
        {
            IsForm = true,
        };
    }

    private static Table Expected(StreamFlow[] flows)
    {
        var caught = flows[^1];
        var water = caught.WaterFactor is { } factor
            ? [TableRow.Of([$"Water in place of {(caught.IsTotal ? "them" : "it")}", .. caught.Catches.Select(test => NumberText.Number(test.Expected.Milliliters * factor, 0))])]
            : Array.Empty<TableRow>();
        return new(
            "Expected in the jug of one row, and what passes, mL",
            [new("Liquid"), .. CatchTest.Times.Select(seconds => new TableColumn($"{NumberText.Number(seconds, 0)} s", Alignment: ColumnAlignment.Right))],
            [
                .. flows.Select(flow => new TableRow(
                    [flow.IsTotal ? $"{flow.Product} together" : flow.Product, .. flow.Catches.Select(test => $"{RateText.Millilitres(test.Expected)} ({RateText.Millilitres(test.Low)} to {RateText.Millilitres(test.High)})")],
                    Strong: flow == caught)),
                .. water,
            ],
            $"{NumberText.Percent(CatchTest.Tolerance)} to either side passes (common practice, no source).{(caught.WaterFactor is { } times ? $" {StarterWords.Water(times)}" : "")}");
    }
}
