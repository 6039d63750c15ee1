using System.Globalization;
using System.Text;

namespace TrialKit.Ingest.Messages;

/// <summary>How text of the user's files and lists of choices are put into a message.</summary>
internal static class Wording
{
    private const int LongestQuote = 60;

    /// <summary>The text in single quotes on one line, shortened when long, with control characters shown as a space.</summary>
    public static string Quote(string text)
    {
        var builder = new StringBuilder("'");
        foreach (var rune in text.EnumerateRunes())
        {
            if (builder.Length > LongestQuote)
            {
                builder.Append("...");
                break;
            }

            builder.Append(Rune.IsControl(rune) ? " " : rune.ToString());
        }

        return builder.Append('\'').ToString();
    }

    /// <summary>The text with line breaks and other control characters shown as spaces.</summary>
    public static string OneLine(string text) => string.Concat(text.Select(character => char.IsControl(character) ? ' ' : character));

    /// <summary>A list as a sentence reads it: <c>in, ft or m</c>.</summary>
    public static string Or(IReadOnlyList<string> choices) => choices.Count switch
    {
        0 => "nothing",
        1 => choices[0],
        _ => $"{string.Join(", ", choices.Take(choices.Count - 1))} or {choices[^1]}",
    };

    /// <summary>A number as short as it reads back.</summary>
    public static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A number of things with its noun: <c>1 cell</c>, <c>2 cells</c>.</summary>
    public static string Count(int count, string noun) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? string.Empty : "s")}");

    /// <summary>A date as the files write it.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A time as the files write it; midnight is written as the date alone.</summary>
    public static string Time(DateTime time) =>
        time.ToString(time.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
