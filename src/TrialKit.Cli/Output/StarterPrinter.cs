using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Cli.Output;

/// <summary>Prints what is put near the seed: the cautions, the amounts, the screen, the ranking by salt, and the flow.</summary>
internal static class StarterPrinter
{
    public static void Print(StarterReview review, ImmutableArray<StreamFlow> flows, UnitSystem units, Terminal terminal)
    {
        terminal.WriteHeading("What is put near the seed");
        foreach (var (_, text) in StarterCautions.All)
        {
            terminal.WriteWrapped(text, indent: 2);
        }

        terminal.Out.WriteLine();
        Amounts(review, units, terminal);
        terminal.WriteWrapped(StarterWords.Compared, indent: 2);
        terminal.Out.WriteLine();
        foreach (var treatment in review.Treatments)
        {
            terminal.WriteHeading($"{treatment.Treatment.Label}: held against published limits");
            foreach (var (product, hazard) in treatment.Hazards)
            {
                terminal.WriteWrapped(StarterWords.Hazard(product, hazard), indent: 2);
            }

            foreach (var line in treatment.Screen)
            {
                terminal.WriteWrapped(StarterWords.Screen(line, units), indent: 2);
            }

            terminal.Out.WriteLine();
        }

        terminal.WriteHeading("Where the limits are printed");
        foreach (var source in LimitSources.All)
        {
            terminal.WriteWrapped(StarterWords.Source(source), indent: 2);
        }

        terminal.Out.WriteLine();
        ConsoleTable.Print(
            terminal,
            "Salt index, a ranking",
            [new("Product or mixture"), new("Index", IsNumber: true), new("")],
            review.Salts.Select(salt => (string[])[salt.Name, NumberText.Number(salt.Index, 1), salt.Missing ?? (salt.IsFromMemory ? "from memory" : "")]));
        terminal.WriteWrapped(StarterWords.SaltRanking, indent: 2);
        terminal.Out.WriteLine();
        Flows(flows, units, terminal);
    }

    private static void Amounts(StarterReview review, UnitSystem units, Terminal terminal)
    {
        var totals = review.Treatments.SelectMany(treatment => treatment.Placements.Select(total => (treatment.Treatment, Total: total))).ToArray();
        ConsoleTable.Print(
            terminal,
            $"Amounts, rows {RateText.Spacing(review.Site.RowSpacing, units)} apart",
            [new("Treatment"), new("Placement"), new("What"), new("Per area", IsNumber: true), new("Along the row", IsNumber: true)],
            totals.SelectMany(entry => entry.Total.Products
                .Select(placed => (string[])[entry.Treatment.Label, Placements.NameOf(placed.Placement), placed.Product.Name, RateText.PerArea(placed.Rate, units), AlongRow(placed.Row, units)])
                .Concat((entry.Total.Nutrients ?? []).Select(amount => (string[])["", "", amount.Nutrient.ToString(), RateText.PerArea(amount.Rate, units), RateText.AlongRow(amount.Row, units)]))));
    }

    private static string AlongRow(RowAmount amount, UnitSystem units) =>
        RateText.OnAFoot(amount, units) is { } foot ? $"{RateText.AlongRow(amount, units)}\n{foot}" : RateText.AlongRow(amount, units);

    private static void Flows(ImmutableArray<StreamFlow> flows, UnitSystem units, Terminal terminal)
    {
        if (flows.IsEmpty)
        {
            return;
        }

        terminal.WriteHeading("Flow of a row");
        foreach (var flow in flows)
        {
            terminal.WriteWrapped(StarterWords.Flow(flow, units), indent: 2);
        }

        terminal.WriteWrapped(StarterWords.OrificeLimits, indent: 2);
        terminal.Out.WriteLine();
        ConsoleTable.Print(
            terminal,
            "Catch test, mL in the jug of one row (5 % either side)",
            [new("Liquid"), new("Placement"), .. CatchTest.Times.Select(seconds => new ConsoleColumn($"{NumberText.Number(seconds, 0)} s", IsNumber: true))],
            flows.Select(flow => (string[])[StarterWords.Name(flow), Placements.NameOf(flow.Placement), .. flow.Catches.Select(test => $"{RateText.Millilitres(test.Expected)} ({RateText.Millilitres(test.Low)}-{RateText.Millilitres(test.High)})")]));
    }
}
