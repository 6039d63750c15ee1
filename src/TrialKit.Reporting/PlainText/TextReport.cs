using System.Text;
using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.PlainText;

/// <summary>Writes a document as plain text for a terminal or a text editor: tables in columns set apart by two spaces or more.</summary>
public static class TextReport
{
    /// <summary>The width at which paragraphs are broken when none is given.</summary>
    public const int DefaultWidth = 80;

    /// <summary>What stands for room to write in.</summary>
    public const string Blank = "______";

    private const string Gap = "  ";

    /// <summary>The document as text.</summary>
    /// <param name="document">What to write.</param>
    /// <param name="width">Columns at which paragraphs are broken, 20 or more; tables are as wide as they are.</param>
    /// <returns>Text that ends in a line end.</returns>
    public static string Render(ReportDocument document, int width = DefaultWidth)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 20);
        var text = new StringBuilder();
        foreach (var block in document.Fullest)
        {
            foreach (var line in Lines(block, width))
            {
                text.Append(line.TrimEnd()).Append('\n');
            }
        }

        return text.Append('\n').Append(document.Footer.Version).Append(" · data ").Append(document.Footer.Fingerprint).Append('\n').ToString();
    }

    private static IEnumerable<string> Lines(Block block, int width) => block switch
    {
        Heading heading => ["", heading.Text, .. heading.Level < 3 ? [new string(heading.Level == 1 ? '=' : '-', heading.Text.Length)] : Array.Empty<string>()],
        Paragraph paragraph => ["", .. Wrapped(paragraph.Text.Plain, width, "", "")],
        KeyFacts facts => ["", .. facts.Facts.Select(fact => $"{fact.Name}: {fact.Value}")],
        MarkedSentences sentences => ["", .. sentences.Sentences.SelectMany(sentence => Wrapped(sentence.Text.Plain, width, "", ""))],
        BulletList list => ["", .. list.Items.SelectMany(item => Wrapped(item.Plain, width, "- ", "  "))],
        Table table => ["", .. table.Caption is { } caption ? [caption] : Array.Empty<string>(), .. Columns(table), .. table.Note is { } note ? Wrapped(note, width, "", "") : []],
        FormGrid form => ["", .. Columns([.. form.Columns.Select(column => column.Header)], form.Rows.Select(row => row.Select(Filled)), [.. form.Columns.Select(_ => ColumnAlignment.Left)])],
        NumberedQuestion question => ["", .. Wrapped(question.Text.Plain, width, $"{NumberText.Count(question.Number)}. ", "   ")],
        AnswerRoom room => room.Answers.Select(answer => $"   {answer}: {Blank}").Prepend(""),
        FigureBlock figure => ["", .. Wrapped($"[{figure.Figure.AltText}]", width, "", ""), .. figure.Note is { } note ? Wrapped(note, width, "", "") : []],
        Note note => ["", .. Wrapped($"{note.Heading}: {note.Text.Plain}", width, "| ", "| ")],
        Rule => ["", new string('-', Math.Min(width, DefaultWidth))],
        Space or PageBreak => [],
        _ => throw new NotSupportedException($"A text has no way to show a {block.GetType().Name}."),
    };

    private static string Filled(string cell) => cell.Length == 0 ? Blank : cell;

    private static IEnumerable<string> Columns(Table table) => Columns(
        [.. table.Columns.Select(column => column.Unit is { } unit ? $"{column.Header}, {unit}" : column.Header)],
        table.Rows.Select(row => row.Cells.Select(cell => table.IsForm ? Filled(cell) : cell)),
        [.. table.Columns.Select(column => column.Alignment)]);

    private static IEnumerable<string> Columns(IReadOnlyList<string> head, IEnumerable<IEnumerable<string>> rows, IReadOnlyList<ColumnAlignment> alignments)
    {
        var lines = rows.Select(row => row.ToArray()).Prepend([.. head]).ToArray();
        var widths = alignments.Select((_, column) => lines.Max(line => line[column].Length)).ToArray();
        return lines.Select(line => string.Join(Gap, line.Select((cell, column) => alignments[column] == ColumnAlignment.Right ? cell.PadLeft(widths[column]) : cell.PadRight(widths[column]))));
    }

    // Spaces that do not break are kept as they are.
    private static IEnumerable<string> Wrapped(string text, int width, string first, string next)
    {
        var line = new StringBuilder(first);
        var isEmpty = true;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!isEmpty && line.Length + 1 + word.Length > width)
            {
                yield return line.ToString();
                line.Clear().Append(next);
                isEmpty = true;
            }

            line.Append(isEmpty ? "" : " ").Append(word);
            isEmpty = false;
        }

        yield return line.ToString();
    }
}
