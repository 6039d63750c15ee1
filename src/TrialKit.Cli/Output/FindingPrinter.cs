using TrialKit.Reporting.Words;
using TrialKit.Results;

namespace TrialKit.Cli.Output;

/// <summary>Prints findings, those of one kind together, the weightiest first.</summary>
internal static class FindingPrinter
{
    public static void Print(IEnumerable<Finding> findings, IReadOnlyList<Measure> measures, Terminal terminal)
    {
        var kinds = findings.GroupBy(finding => (finding.Id, finding.Weight)).OrderByDescending(kind => kind.Key.Weight).ToArray();
        if (kinds.Length == 0)
        {
            return;
        }

        terminal.WriteHeading("Doubts and notes");
        foreach (var kind in kinds)
        {
            terminal.WriteWrapped($"{Weight(kind.Key.Weight)}: {FindingText.Of([.. kind], measures)}", indent: 2);
        }

        terminal.Out.WriteLine();
    }

    private static string Weight(FindingWeight weight) => weight switch
    {
        FindingWeight.Note => "note",
        FindingWeight.Caution => "caution",
        _ => "serious",
    };
}
