using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>Findings of one kind as one text: what was found at the first place, then every other place.</summary>
public static class FindingText
{
    /// <summary>The text.</summary>
    /// <param name="kind">Findings of one id, one or more.</param>
    /// <param name="measures">The measures they may be about.</param>
    public static string Of(IReadOnlyList<Finding> kind, IEnumerable<Measure> measures)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var known = measures.ToArray();
        var first = kind[0];
        var label = Label(first.Where, known);

        // The message of a finding about a measure begins with its label; one about a strip does not name it.
        var text = first.Where is null || first.Message.Contains(label, StringComparison.OrdinalIgnoreCase) ? first.Message : $"{label}: {first.Message}";
        var others = kind.Skip(1).Where(finding => finding.Where is not null && finding.Where != first.Where).Select(finding => Label(finding.Where, known)).Distinct(StringComparer.Ordinal).ToArray();
        var alike = kind.All(finding => finding.Message == first.Message) ? "The same at" : "Likewise, with figures of their own:";
        return others.Length == 0 ? text : $"{text} {alike} {string.Join("; ", others)}.";
    }

    private static string Label(string? place, Measure[] known) =>
        Array.Find(known, measure => measure.Id == place)?.Label ?? place ?? "";
}
