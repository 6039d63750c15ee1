using TrialKit.Reporting.Document;
using TrialKit.Reporting.Words;
using TrialKit.Results;

namespace TrialKit.Reporting.Report;

/// <summary>Findings as notes: those of one kind together, the weightiest first.</summary>
internal static class FindingNotes
{
    /// <summary>What only a reader of statistics can weigh; it stands with the other doubts, not on the first page.</summary>
    private static readonly string[] OfStatistics = ["not-bell-shaped", "odd-one-out", "spread-by-treatment", "blocks-not-additive"];

    /// <summary>Every finding.</summary>
    public static IEnumerable<Note> All(TrialAnalysis analysis) => Of(Findings(analysis), Measures(analysis));

    /// <summary>Some findings, and the measures whose labels they may need.</summary>
    public static IEnumerable<Note> Of(IEnumerable<Finding> findings, IReadOnlyList<Measure> measures) =>
        Kinds(findings).Select(kind => Note(kind, measures));

    /// <summary>Those that are more than good to know.</summary>
    public static IEnumerable<Note> Doubts(TrialAnalysis analysis) => All(analysis).Where(note => note.Weight != NoteWeight.Remark);

    /// <summary>Those of them that a grower can weigh, each as short as it has to be.</summary>
    public static IEnumerable<Func<int, Note>> FieldDoubts(TrialAnalysis analysis) =>
        from kind in Kinds(Findings(analysis).Where(finding => !OfStatistics.Contains(finding.Id, StringComparer.Ordinal)))
        let note = Note(kind, Measures(analysis))
        where note.Weight != NoteWeight.Remark
        select (Func<int, Note>)(letters => note with
        {
            Heading = Brief.Of(note.Heading, letters),
            Text = (analysis.Starter is { } starter ? StarterWords.InOneLine(kind[0].Id, starter, letters) : null) ?? Brief.Sentences(note.Text.Plain, letters),
        });

    private static IEnumerable<Finding[]> Kinds(IEnumerable<Finding> findings) =>
        findings.GroupBy(finding => (finding.Id, finding.Weight)).OrderByDescending(kind => kind.Key.Weight).Select(kind => kind.ToArray());

    private static IEnumerable<Finding> Findings(TrialAnalysis analysis) => analysis.AllFindings.Concat(PrintFindings.Of(analysis));

    private static Measure[] Measures(TrialAnalysis analysis) => [.. analysis.Measures.Select(measure => measure.Measure)];

    private static Note Note(Finding[] kind, IReadOnlyList<Measure> measures)
    {
        var weight = kind[0].Weight switch
        {
            FindingWeight.Note => NoteWeight.Remark,
            FindingWeight.Caution => NoteWeight.Doubt,
            _ => NoteWeight.Grave,
        };
        return new(weight, Heading(kind[0].Id), FindingText.Of(kind, measures));
    }

    // The id is made of the words that name the finding.
    private static string Heading(string id) => char.ToUpperInvariant(id[0]) + id[1..].Replace('-', ' ');
}
