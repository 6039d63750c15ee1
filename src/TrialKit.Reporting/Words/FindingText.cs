using System.Text.RegularExpressions;
using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>Findings of one kind as one text: what was found at the first place, then every other place of which the same is said but for its figures.</summary>
public static partial class FindingText
{
    /// <summary>The text.</summary>
    /// <param name="kind">Findings of one id, one or more.</param>
    /// <param name="analysis">The analysis they belong to, which knows the labels of measures.</param>
    public static string Of(IReadOnlyList<Finding> kind, TrialAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return Of(kind, [.. analysis.Measures.Select(measure => measure.Measure)]);
    }

    /// <summary>The text.</summary>
    /// <param name="kind">Findings of one id, one or more.</param>
    /// <param name="measures">The measures whose labels the text may need.</param>
    public static string Of(IReadOnlyList<Finding> kind, IReadOnlyList<Measure> measures)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(measures);
        return string.Join(" ", kind.GroupBy(finding => Wording(finding, Label(finding.Where, measures)), StringComparer.Ordinal).Select(alike => Alike([.. alike], measures)));
    }

    private static string Alike(Finding[] kind, IReadOnlyList<Measure> measures)
    {
        var first = kind[0];
        var label = Label(first.Where, measures);

        // The message of a finding about a measure begins with its label; one about a strip does not name it.
        var text = first.Where is null || first.Message.Contains(label, StringComparison.OrdinalIgnoreCase) ? first.Message : $"{label}: {first.Message}";
        var others = kind.Skip(1).Where(finding => finding.Where is not null && finding.Where != first.Where).Select(finding => Label(finding.Where, measures)).Distinct(StringComparer.Ordinal).ToArray();
        var alike = Array.TrueForAll(kind, finding => finding.Message == first.Message) ? "The same at" : "Likewise, with figures of their own:";
        return others.Length == 0 ? text : $"{text} {alike} {string.Join("; ", others)}.";
    }

    // What is said, without the place it is said of and without its figures.
    private static string Wording(Finding finding, string label)
    {
        var words = label.Length > 0 ? finding.Message.Replace(label, "#", StringComparison.OrdinalIgnoreCase) : finding.Message;
        return Figures().Replace(words, "#");
    }

    [GeneratedRegex(@"[-−]?\d[\d.,]*(E[-+]?\d+)?", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Figures();

    private static string Label(string? place, IReadOnlyList<Measure> measures) =>
        measures.FirstOrDefault(measure => measure.Id == place)?.Label ?? place ?? "";
}
