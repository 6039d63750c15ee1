using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;

namespace TrialKit.Cli.Output;

/// <summary>Prints what more strips or spots would bring.</summary>
internal static class SpotPrinter
{
    public static void Print(TrialAnalysis analysis, Terminal terminal)
    {
        if (analysis.Spots.IsEmpty)
        {
            return;
        }

        ConsoleTable.Print(
            terminal,
            "Next time: difference usually shown, by strips and spots",
            [new("Measure"), new("Strips", IsNumber: true), new("Spots", IsNumber: true), new("Error", IsNumber: true), new("Shown", IsNumber: true)],
            analysis.Spots.SelectMany(spots => spots.Plans.Select((plan, index) => (string[])
            [
                index == 0 ? MeasureText.Name(spots.Measure) : "",
                NumberText.Count(plan.StripsPerTreatment),
                NumberText.Count(plan.SpotsPerStrip),
                MeasureText.Value(spots.Measure, plan.StandardError),
                MeasureText.Value(spots.Measure, plan.Detectable),
            ])));
    }
}
