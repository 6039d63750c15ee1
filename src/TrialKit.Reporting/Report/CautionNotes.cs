using TrialKit.Reporting.Document;
using TrialKit.Starter;

namespace TrialKit.Reporting.Report;

/// <summary>The cautions as they stand on a page.</summary>
internal static class CautionNotes
{
    public static IEnumerable<Block> All()
    {
        yield return new Note(NoteWeight.Doubt, "Before you rely on a figure here", StarterCautions.LabelFirst);
        yield return new BulletList([.. StarterCautions.All.Skip(1).Select(caution => RichText.Of(caution.Text))]);
    }
}
