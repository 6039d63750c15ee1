using System.Globalization;
using System.Text.RegularExpressions;

namespace TrialKit.Reporting.Pdf;

/// <summary>The table at a file's end that says where each object begins (ISO 32000-1, 7.5.4).</summary>
/// <param name="Start">Where the table begins.</param>
/// <param name="Head">Its first two lines.</param>
/// <param name="Entries">For each object number from 0, its place and the rest of its line.</param>
/// <param name="Trailer">From the trailer to the line before the table's own place.</param>
/// <param name="End">What follows that place.</param>
internal sealed partial record CrossReferenceTable(
    int Start, string Head, IReadOnlyList<(int Place, string State)> Entries, string Trailer, string End)
{
    /// <summary>Each object in use, in the order of the file: its number, where it begins and where the next one does.</summary>
    public IEnumerable<(int Number, int From, int To)> Objects
    {
        get
        {
            var used = Entries.Select((entry, number) => (Number: number, From: entry.Place, entry.State)).Where(entry => entry.State.Contains('n', StringComparison.Ordinal)).OrderBy(entry => entry.From).ToArray();
            return used.Select((entry, i) => (entry.Number, entry.From, i + 1 < used.Length ? used[i + 1].From : Start));
        }
    }

    /// <summary>The table of a file.</summary>
    /// <param name="text">The file, a character for each byte.</param>
    /// <exception cref="InvalidOperationException">There is no such table at its end.</exception>
    public static CrossReferenceTable Of(string text)
    {
        var table = Table().Match(text);
        return table.Success
            ? new(
                table.Index,
                table.Groups["head"].Value,
                [.. Entry().Matches(table.Groups["entries"].Value).Select(entry => (int.Parse(entry.Groups["place"].Value, CultureInfo.InvariantCulture), entry.Groups["state"].Value))],
                table.Groups["trailer"].Value,
                table.Groups["end"].Value)
            : throw new InvalidOperationException("The file written has no cross-reference table at its end.");
    }

    [GeneratedRegex(
        @"(?<head>xref\n0 \d+\n)(?<entries>(?:\d{10} \d{5} [nf][ \r]\n)+)(?<trailer>trailer\n.*startxref\n)\d+(?<end>\n%%EOF\s*)\z",
        RegexOptions.Singleline | RegexOptions.RightToLeft | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        5000)]
    private static partial Regex Table();

    [GeneratedRegex(@"(?<place>\d{10})(?<state> \d{5} [nf][ \r]\n)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Entry();
}
