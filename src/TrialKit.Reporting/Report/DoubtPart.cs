using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Report;

/// <summary>Everything a careful reader should know or doubt, the weightiest first.</summary>
internal static class DoubtPart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        var notes = FindingNotes.All(analysis).ToArray();
        return notes.Length == 0 ? [] : [new Heading(2, "Doubts and notes"), .. notes];
    }
}
