using System.Buffers;
using System.Globalization;

namespace TrialKit.Trials;

/// <summary>
/// Text in tables of separated cells, kept from being run: a spreadsheet takes a cell that begins with one of a few characters for a formula,
/// so such a text is written with an apostrophe before it, which a spreadsheet takes for "this is text", and read without it.
/// </summary>
/// <remarks>
/// What reads back is what was written: apostrophes that already stand before such a character get one more and lose one.
/// A text that is a plain number, such as a strip named -3, runs nothing and stays as it is.
/// The characters are those of the Open Worldwide Application Security Project's page on CSV injection (value from memory) and their wide forms.
/// </remarks>
internal static class GuardedText
{
    private const char Mark = '\'';

    private static readonly SearchValues<char> Triggers = SearchValues.Create("=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20");

    /// <summary>The text as a table holds it.</summary>
    public static string Guard(string text) => Needs(text) && !IsNumber(text) ? Mark + text : text;

    /// <summary>The text that a table's cell stands for.</summary>
    public static string Unguard(string cell) => cell.Length > 1 && cell[0] == Mark && Needs(cell) ? cell[1..] : cell;

    private static bool Needs(string text)
    {
        var rest = text.AsSpan().TrimStart(Mark);
        return !rest.IsEmpty && Triggers.Contains(rest[0]);
    }

    private static bool IsNumber(string text) => double.TryParse(text, NumberStyles.Float & ~NumberStyles.AllowLeadingWhite & ~NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out _);
}
