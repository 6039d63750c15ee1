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

        terminal.WriteWrapped(MoneyWords.Basis, indent: 2);
        terminal.Out.WriteLine();
    }
}
