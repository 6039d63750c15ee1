using System.Globalization;
using System.Text.RegularExpressions;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.PlainText;
using TrialKit.Reporting.Sheets.Teaching;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>A student's sheet as text, and the numbers that can be read off it.</summary>
internal sealed partial class SheetText
{
    private const int OneLine = 100_000;

    private readonly string[] lines;

    private SheetText(string text)
    {
        Text = text;
        lines = text.Split('\n');
    }

    /// <summary>The whole text, each paragraph on one line.</summary>
    public string Text { get; }

    /// <summary>Whether the head says that it is of the second level.</summary>
    public bool IsSecond => lines.Contains("Level: second", StringComparer.Ordinal);

    /// <summary>The student's sheet of an exercise; nothing else of the exercise is kept.</summary>
    public static SheetText Of(Exercise exercise) => new(TextReport.Render(exercise.Student(PageSize.Letter), OneLine));

    /// <summary>The text of any document.</summary>
    public static string Of(ReportDocument document) => TextReport.Render(document, OneLine);

    /// <summary>The rows below a table's caption and head, cell by cell.</summary>
    public IReadOnlyList<string[]> Table(string caption)
    {
        var start = Array.IndexOf(lines, caption);
        Assert.True(start >= 0, $"The sheet has no table '{caption}'.");
        return [.. lines.Skip(start + 2).TakeWhile(line => line.Length > 0).Select(line => Gaps().Split(line.Trim()))];
    }

    /// <summary>A column of a table as numbers.</summary>
    public decimal[] Column(string caption, int column) => [.. Table(caption).Select(row => Number(row[column]))];

    /// <summary>The head of a table, cell by cell.</summary>
    public string[] Head(string caption)
    {
        var start = Array.IndexOf(lines, caption);
        Assert.True(start >= 0, $"The sheet has no table '{caption}'.");
        return Gaps().Split(lines[start + 1].Trim());
    }

    /// <summary>The numbers of a pattern's groups in the text, each group one number.</summary>
    public decimal[] Find(string pattern) => [.. Matched(pattern).Groups.Values.Skip(1).Select(group => Number(group.Value))];

    /// <summary>The words of a pattern's first group in the text.</summary>
    public string Words(string pattern) => Matched(pattern).Groups[1].Value;

    /// <summary>A number as it is printed: thousands set off, a minus of its own.</summary>
    public static decimal Number(string text) =>
        decimal.Parse(text.Replace('\u2212', '-').Replace("\u00A0%", "", StringComparison.Ordinal), NumberStyles.Number, CultureInfo.InvariantCulture);

    private Match Matched(string pattern)
    {
        var match = Regex.Match(Text, pattern, RegexOptions.None, TimeSpan.FromSeconds(5));
        Assert.True(match.Success, $"The sheet says nothing like '{pattern}'.");
        return match;
    }

    [GeneratedRegex(" {2,}", RegexOptions.None, 1000)]
    private static partial Regex Gaps();
}
