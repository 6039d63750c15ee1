using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;
using TrialKit.Stand;

namespace TrialKit.Cli.Output;

/// <summary>Prints the comparison of keeping and replanting with the table's name, its limits and its caution.</summary>
internal static class ReplantPrinter
{
    public static void Print(IReadOnlyList<(string Name, KeepOrReplant Comparison)> rows, UnitSystem units, Terminal terminal)
    {
        var unit = units == UnitSystem.Us ? "plants/ac" : "plants/ha";
        ConsoleTable.Print(
            terminal,
            "Keep or replant, yield in percent of the best",
            [new(""), new($"Stand, {unit}", IsNumber: true), new("Planted"), new("Yield, %", IsNumber: true), new("Difference", IsNumber: true)],
            rows.SelectMany(row => new string[][]
            {
                [$"keep: {row.Name}", Stand(row.Comparison.Stand), NumberText.ShortDate(row.Comparison.Planted), NumberText.Number(row.Comparison.Kept, 0), ""],
                ["replant", Stand(row.Comparison.ReplantStand), NumberText.ShortDate(row.Comparison.Replanted), NumberText.Number(row.Comparison.After, 0), row.Comparison.Gain is { } gain ? NumberText.Difference(gain, 0) : NumberText.Dash],
            }));
        foreach (var (name, comparison) in rows)
        {
            terminal.WriteWrapped($"{char.ToUpperInvariant(name[0])}{name[1..]}: {ReplantWords.Of(comparison)}", indent: 0);
        }

        terminal.Out.WriteLine();
        terminal.WriteWrapped($"Table: {StandResponse.Source}; from {Stand(StandResponse.Stands.Least)} to {Stand(StandResponse.Stands.Greatest)} {unit}, planted April 10 to May 30; straight between its entries, nothing beyond them.", indent: 0);
        terminal.WriteWrapped(StandResponse.Caution, indent: 0);

        string Stand(PlantDensity density) => NumberText.Stand(units == UnitSystem.Us ? density.PerAcre : density.PerHectare);
    }
}
