using System.Runtime.InteropServices;
using SkiaSharp;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Pdf;

/// <summary>A run of letters in one face and tone.</summary>
/// <param name="Text">The letters.</param>
/// <param name="Face">The face.</param>
/// <param name="Color">The tone.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Fragment(string Text, BundledFace Face, SKColor Color);

/// <summary>Breaks text into lines: at spaces and after hyphens; a word too long for a line is broken between letters.</summary>
internal static class LineBreaker
{
    // The letters of what a unit is per: ac, ha, min.
    private const int LongestUnit = 3;

    /// <summary>The fragments of a text.</summary>
    /// <param name="text">The text with its emphasis.</param>
    /// <param name="strong">Whether all of it is heavier.</param>
    /// <param name="color">The tone of what is not quiet.</param>
    public static IReadOnlyList<Fragment> Fragments(RichText text, bool strong, SKColor color) =>
    [
        .. text.Runs.Select(run => new Fragment(
            PrintableText.Clean(run.Text),
            BundledFonts.Face(strong || run.Emphasis.HasFlag(Emphasis.Strong), run.Emphasis.HasFlag(Emphasis.Italic)),
            run.Emphasis.HasFlag(Emphasis.Quiet) ? FigureStyle.Quiet : color)),
    ];

    /// <summary>The lines of a text; an empty text has one empty line.</summary>
    /// <param name="fragments">The text.</param>
    /// <param name="size">Its size.</param>
    /// <param name="width">The width of a line.</param>
    public static IReadOnlyList<IReadOnlyList<Fragment>> Break(IReadOnlyList<Fragment> fragments, double size, double width)
    {
        var lines = new List<IReadOnlyList<Fragment>>();
        var line = new List<Fragment>();
        var used = 0.0;
        foreach (var word in Words(fragments))
        {
            if (line.Count > 0 && used + Width(word, size, trimmed: true) > width)
            {
                lines.Add(Merge(line));
                line.Clear();
                used = 0;
            }

            foreach (var piece in used == 0 && Width(word, size, trimmed: true) > width ? Chop(word, size, width) : [word])
            {
                if (line.Count > 0 && used + Width(piece, size, trimmed: true) > width)
                {
                    lines.Add(Merge(line));
                    line.Clear();
                    used = 0;
                }

                line.AddRange(piece);
                used += Width(piece, size, trimmed: false);
            }
        }

        if (line.Count > 0 || lines.Count == 0)
        {
            lines.Add(Merge(line));
        }

        return lines;
    }

    /// <summary>The width of the widest part that is not broken unless it must be.</summary>
    public static double WidestWord(IReadOnlyList<Fragment> fragments, double size) =>
        Words(fragments).Select(word => Width(word, size, trimmed: true)).DefaultIfEmpty(0).Max();

    /// <summary>The width of a line, without the spaces at its end.</summary>
    public static double Width(IReadOnlyList<Fragment> line, double size, bool trimmed = true)
    {
        var width = 0.0;
        for (var i = 0; i < line.Count; i++)
        {
            var text = trimmed && i == line.Count - 1 ? line[i].Text.TrimEnd(' ') : line[i].Text;
            width += TextMeasure.Width(text, line[i].Face, size);
        }

        return width;
    }

    // A word carries the spaces behind it; it may run over several fragments.
    private static IEnumerable<List<Fragment>> Words(IReadOnlyList<Fragment> fragments)
    {
        var word = new List<Fragment>();
        foreach (var fragment in fragments)
        {
            var start = 0;
            for (var i = 0; i < fragment.Text.Length; i++)
            {
                if (!EndsWord(fragment.Text, i))
                {
                    continue;
                }

                word.Add(fragment with { Text = fragment.Text[start..(i + 1)] });
                yield return word;
                word = [];
                start = i + 1;
            }

            if (start < fragment.Text.Length)
            {
                word.Add(fragment with { Text = fragment.Text[start..] });
            }
        }

        if (word.Count > 0)
        {
            yield return word;
        }
    }

    private static bool EndsWord(string text, int i) => text[i] switch
    {
        ' ' => i + 1 == text.Length || text[i + 1] != ' ',
        '-' => i > 0 && char.IsLetter(text[i - 1]) && i + 1 < text.Length && char.IsLetter(text[i + 1]),

        // A unit stays whole: gal/ac is no two words.
        '/' => i > 0 && char.IsLetter(text[i - 1]) && text[(i + 1)..].TakeWhile(char.IsLetter).Count() > LongestUnit,
        '—' => i + 1 < text.Length,
        _ => false,
    };

    // At least one letter stands on each line, however narrow.
    private static IEnumerable<List<Fragment>> Chop(List<Fragment> word, double size, double width)
    {
        var piece = new List<Fragment>();
        var used = 0.0;
        foreach (var fragment in word)
        {
            foreach (var rune in fragment.Text.EnumerateRunes())
            {
                var letter = fragment with { Text = rune.ToString() };
                var advance = TextMeasure.Width(letter.Text, letter.Face, size);
                if (piece.Count > 0 && used + advance > width && rune.Value != ' ')
                {
                    yield return piece;
                    piece = [];
                    used = 0;
                }

                piece.Add(letter);
                used += advance;
            }
        }

        yield return piece;
    }

    private static List<Fragment> Merge(List<Fragment> line)
    {
        var merged = new List<Fragment>();
        foreach (var fragment in line)
        {
            if (merged.Count > 0 && merged[^1].Face == fragment.Face && merged[^1].Color == fragment.Color)
            {
                merged[^1] = fragment with { Text = merged[^1].Text + fragment.Text };
            }
            else
            {
                merged.Add(fragment);
            }
        }

        return merged;
    }
}
