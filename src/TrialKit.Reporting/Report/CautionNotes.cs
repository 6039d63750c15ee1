using TrialKit.Reporting.Document;
using TrialKit.Starter;

namespace TrialKit.Reporting.Report;

/// <summary>The cautions as they stand on a page.</summary>
internal static class CautionNotes
{
    public static IEnumerable<Block> All()
    {
        yield return First();
        yield return new BulletList([.. StarterCautions.All.Skip(1).Select(caution => RichText.Of(caution.Text))]);
    }

    /// <summary>The same where a sheet is to hold boxes too: all of them, the first as large, the others in small letters.</summary>
    public static IEnumerable<Block> Small()
    {
        yield return First();
        yield return new Paragraph(string.Join(" ", StarterCautions.All.Skip(1).Select(caution => caution.Text)), TextSize.Small);
    }

    private static Note First() => new(NoteWeight.Doubt, "Before you rely on a figure here", StarterCautions.LabelFirst);
}
