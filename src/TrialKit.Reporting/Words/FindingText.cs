using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>Findings of one kind as one text: the first in full, then the other places.</summary>
public static class FindingText
{
    private const int MostPlaces = 12;

    /// <summary>The text.</summary>
    /// <param name="kind">Findings of one id, one or more.</param>
    public static string Of(IReadOnlyList<Finding> kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var places = kind.Select(finding => finding.Where).OfType<string>().Distinct(StringComparer.Ordinal).ToArray();
        var others = places.Skip(1).Take(MostPlaces).ToArray();
        return kind[0].Message
            + (others.Length > 0 ? $" The same for {string.Join(", ", others)}{(places.Length - 1 > MostPlaces ? " and others" : "")}." : "");
    }
}
