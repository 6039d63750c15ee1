using TrialKit.Reporting.Words;

namespace TrialKit.Cli.Output;

/// <summary>Prints what each difference costs and is worth.</summary>
internal static class MoneyPrinter
{
    public static void Print(TrialAnalysis analysis, Terminal terminal)
    {
        if (analysis.Money.IsEmpty)
        {
            return;
        }

        terminal.WriteHeading("What the difference is worth");
        foreach (var budget in analysis.Money)
        {
            foreach (var sentence in MoneyWords.Of(budget, analysis.Trial))
            {
                terminal.WriteWrapped(sentence, indent: 2);
            }
        }

        if (MoneyWords.Basis(analysis.Money) is { } basis)
        {
            terminal.WriteWrapped(basis, indent: 2);
        }

        terminal.Out.WriteLine();
        var text = new MoneyText(analysis.Trial.Units, analysis.Trial.Crop.Bushel);
        foreach (var budget in analysis.Money.Where(budget => budget.At is not null))
        {
            ConsoleTable.Print(
                terminal,
                $"{budget.Treatment.Label} against {budget.Baseline.Label}: {ChanceRows.Caption.ToLowerInvariant()}",
                [.. ChanceRows.Heads(budget, text).Select(head => new ConsoleColumn(head, IsNumber: true))],
                ChanceRows.Of(budget, text));
        }
    }
}
