using System.Text;

namespace TrialKit.Reporting.Fonts;

/// <summary>Text as the bundled font can print it: what it lacks is replaced, visibly, and can be named in a finding.</summary>
public static class PrintableText
{
    /// <summary>What stands where a character cannot be printed: U+FFFD, a question mark in a lozenge.</summary>
    public const string Replacement = "\uFFFD";

    /// <summary>The text with each character that the font lacks replaced; control characters become spaces.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>Text of which every character has a glyph.</returns>
    public static string Clean(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.EnumerateRunes().All(IsPrintable))
        {
            return text;
        }

        var cleaned = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            cleaned.Append(IsPrintable(rune) ? rune.ToString() : Rune.IsControl(rune) ? " " : Replacement);
        }

        return cleaned.ToString();
    }

    /// <summary>The characters of some texts that the font lacks, each once, in order of code point.</summary>
    /// <param name="texts">Any texts, such as the names in a trial.</param>
    public static IReadOnlyList<string> Missing(IEnumerable<string> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        return
        [
            .. texts.SelectMany(text => text.EnumerateRunes())
                .Where(rune => !IsPrintable(rune) && !Rune.IsControl(rune))
                .Distinct()
                .Order()
                .Select(rune => rune.ToString()),
        ];
    }

    private static bool IsPrintable(Rune rune) =>
        !Rune.IsControl(rune) && BundledFonts.Typeface(BundledFace.Regular).ContainsGlyph(rune.Value);
}
