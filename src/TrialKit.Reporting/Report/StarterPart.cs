using System.Collections.Immutable;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Report;

/// <summary>What is put near the seed: cautions, amounts, the screen, the ranking by salt, and the flow.</summary>
internal static class StarterPart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis) =>
        analysis.Starter is { } review ? [new Heading(2, "What was put near the seed"), .. Of(review, analysis.Flows, analysis.Trial.Units)] : [];

    /// <summary>The part without its heading.</summary>
    public static IEnumerable<Block> Of(StarterReview review, ImmutableArray<StreamFlow> flows, UnitSystem units)
    {
        foreach (var caution in CautionNotes.All())
        {
            yield return caution;
        }

        yield return Products(review, units);
        yield return Nutrients(review, units);
        yield return new Paragraph(StarterWords.Compared, TextSize.Small);
        foreach (var treatment in review.Treatments)
        {
            yield return new Heading(3, $"{treatment.Treatment.Label}: held against published limits");
            yield return new BulletList([.. treatment.Hazards.Select(entry => RichText.Of(StarterWords.Hazard(entry.Product, entry.Hazard), Emphasis.Strong)), .. treatment.Screen.Select(line => Line(line, units))]);
        }

        yield return new Heading(3, "Where the limits are printed");
        yield return new BulletList([.. LimitSources.All.Select(source => RichText.Of(StarterWords.Source(source)))]);
        yield return Salts(review);
        if (!flows.IsEmpty)
        {
            foreach (var block in Flows(flows, units))
            {
                yield return block;
            }
        }
    }

    // On one line: a number and its unit are read together.
    private static string Whole(string text) => text.Replace(' ', '\u00A0');

    private static RichText Line(ScreenLine line, UnitSystem units) =>
        RichText.Of(StarterWords.Screen(line, units), line.Verdict is ScreenVerdict.Over or ScreenVerdict.AtLimit ? Emphasis.Strong : Emphasis.None);

    private static Table Products(StarterReview review, UnitSystem units) => new(
        "Products and where they go",
        [
            new("Treatment"),
            new("Product"),
            new("Placement"),
            new("Per area", Alignment: ColumnAlignment.Right),
            new("Along the row", Alignment: ColumnAlignment.Right),
            .. units == UnitSystem.Us ? [new TableColumn("On a foot", "mL", ColumnAlignment.Right)] : Array.Empty<TableColumn>(),
            new("Weight", units == UnitSystem.Us ? "lb/ac" : "kg/ha", ColumnAlignment.Right),
        ],
        [
            .. from treatment in review.Treatments
               from total in treatment.Placements
               from placed in total.Products
               select TableRow.Of(
               [
                   treatment.Treatment.Label,
                   placed.Product.Name,
                   placed.Share < 1 ? $"{Placements.NameOf(placed.Placement)}, {NumberText.Percent(placed.Share)}" : Placements.NameOf(placed.Placement),
                   Whole(RateText.PerArea(placed.Rate, units)),
                   Whole(RateText.AlongRow(placed.Row, units)),
                   .. units == UnitSystem.Us ? [placed.Row.IsVolume ? NumberText.Figures(placed.Row.ThousandthsPerFoot, 3) : NumberText.Dash] : Array.Empty<string>(),
                   placed.Weight is { } weight ? NumberText.Figures(units == UnitSystem.Us ? weight.PerAcreUs : weight.PerHectare, 3) : NumberText.Dash,
               ]),
        ],
        $"Along the row: for rows {RateText.Spacing(review.Site.RowSpacing, units)} apart. A 2x2x2 placement shares its amount between two bands.");

    private static Table Nutrients(StarterReview review, UnitSystem units) => new(
        "Nutrients at each placement",
        [new("Treatment"), new("Placement"), new("Nutrient"), new("Per area", Alignment: ColumnAlignment.Right), new("Along the row", Alignment: ColumnAlignment.Right)],
        [
            .. from treatment in review.Treatments
               from total in treatment.Placements
               from amount in total.Nutrients ?? []
               select TableRow.Of(treatment.Treatment.Label, Placements.NameOf(total.Placement), amount.Nutrient.ToString(), RateText.PerArea(amount.Rate, units), RateText.AlongRow(amount.Row, units)),
        ],
        "All products of a placement together, from their guaranteed analyses.");

    private static Table Salts(StarterReview review) => new(
        "Salt index, the highest first",
        [new("Product or mixture"), new("Salt index", Alignment: ColumnAlignment.Right), new("")],
        [.. review.Salts.Select(salt => TableRow.Of(salt.Name, NumberText.Number(salt.Index, 1), salt.Missing ?? (salt.IsFromMemory ? "value from memory" : "")))],
        StarterWords.SaltRanking);

    private static IEnumerable<Block> Flows(ImmutableArray<StreamFlow> flows, UnitSystem units)
    {
        yield return new Heading(3, "Flow of a row");
        yield return new BulletList([.. flows.Select(flow => RichText.Of(StarterWords.Flow(flow, units)))]);
        yield return new Table(
            "Catch test: mL in the jug of one row",
            [new("Liquid"), new("Placement"), .. CatchTest.Times.Select(seconds => new TableColumn($"{NumberText.Number(seconds, 0)} s", "mL", ColumnAlignment.Right))],
            [.. flows.Select(flow => TableRow.Of(
                [StarterWords.Name(flow), Placements.NameOf(flow.Placement), .. flow.Catches.Select(test => Whole($"{RateText.Millilitres(test.Expected)} ({RateText.Millilitres(test.Low)} to {RateText.Millilitres(test.High)})"))]))],
            $"In brackets {NumberText.Percent(CatchTest.Tolerance)} to either side (common practice, no source). All outlets of a row together; where several liquids share them, the jug holds what stands beside their names together. {StarterWords.OrificeLimits}");
    }
}
