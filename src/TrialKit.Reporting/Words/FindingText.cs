using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>Findings of one kind as one text: what was found at the first place, then every other place.</summary>
public static class FindingText
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
        var first = kind[0];
        var label = Label(first.Where, measures);

        // The message of a finding about a measure begins with its label; one about a strip does not name it.
        var text = first.Where is null || first.Message.Contains(label, StringComparison.OrdinalIgnoreCase) ? first.Message : $"{label}: {first.Message}";
        var others = kind.Skip(1).Where(finding => finding.Where is not null && finding.Where != first.Where).Select(finding => Label(finding.Where, measures)).Distinct(StringComparer.Ordinal).ToArray();
        var alike = kind.All(finding => finding.Message == first.Message) ? "The same at" : "Likewise, with figures of their own:";
        return others.Length == 0 ? text : $"{text} {alike} {string.Join("; ", others)}.";
    }

    private static string Label(string? place, IReadOnlyList<Measure> measures) =>
        measures.FirstOrDefault(measure => measure.Id == place)?.Label ?? place ?? "";
}
