using System.Text.RegularExpressions;

namespace TrialKit.Fuzz.Mutation;

/// <summary>Cuts text into tokens: a number, a word, or a single mark.</summary>
internal static partial class Token
{
    /// <summary>Tokens that have undone readers before, or that stand at the edge of what a cell may hold.</summary>
    public static readonly string[] Awkward =
    [
        "", " ", "0", "-0", "-1", "1", "1e308", "1e309", "-1e309", "1e-320", "NaN", "nan", "Infinity", "-Infinity", "0x1F", "1_000", "1,5", "1.000.000", "+5", "1e", ".", "-", "--", "--1",
        "2147483647", "2147483648", "-2147483649", "9223372036854775808", "18446744073709551616", "99999999999999999999999999999999999999", "0.1000000000000000055511151231257827",
        "999999", "1000000", "1000001", "0.0000001",
        "0001-01-01", "9999-12-31", "2026-02-29", "2026-13-01", "2026-04-31", "2026-04-27T24:00", "2026-04-27 23:59:60", "2026-03-29 02:30", "4/27/2026", "46139", "27.04.2026", "2026-4-7",
        "NA", "na", "N/A", "#N/A", "#REF!", "#DIV/0!", "null", "nil", "none", "-", ".", "-9999", "-999",
        "\"", "\"\"", "\"\"\"", "'''", "'", "\\", "\\u0000", "\0", "\t", "\r", "\n", "\r\n", ",", ";", "|", "#", "[", "]", "[[", "]]", "{", "}", "=", "==", ".", "..", "/", "../", "../../etc/passwd", "/dev/zero", "//", "~", "%", "%s", "%n", "{0}", "$(id)", "`id`",
        "=1+1", "=cmd|' /C calc'!A0", "@SUM(1)", "+1-1", "<b>", "</table>", "<script>alert(1)</script>", "&amp;", "&#x1F4A9;", "]]>", "<!--", "<![CDATA[", "<?xml?>",
        "\uFEFF", "\u200B", "\u202E", "\u0660\u0661\u0662", "\u00A0", "\u2028", "\u0000", "\uD83C\uDF3D", "e\u0301", "\u1E9E", "\u0130", "ſ", "Ａ１", "CON", "nul.csv", "a1", "A1 ", " A1", "A1\u00A0",
        "true", "false", "strip", "date", "plants", "tmax_f", "length_ft", "length_m", "weight_lb", "spot", "block", "treatment", "chains", "none", "pairs", "blocks", "us", "metric", "title", "units",
        "5 gal/ac", "30 in", "0 in", "-3 in", "1e400 in", "95 %", "101 %", "4.50 $/bu", "1 €/t", "10-34-0", "99-99-99", "34000 seeds/ac", "1e300 seeds/ac",
    ];

    /// <summary>The text in pieces that put together give it again.</summary>
    public static List<string> Split(string text)
    {
        var pieces = new List<string>();
        foreach (var match in Pieces().EnumerateMatches(text))
        {
            pieces.Add(text.Substring(match.Index, match.Length));
        }

        return pieces;
    }

    [GeneratedRegex(@"[+-]?\d+(\.\d+)?|[\p{L}_]+|[\s\S]", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Pieces();
}
