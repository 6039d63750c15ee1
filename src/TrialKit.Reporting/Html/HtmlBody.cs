using System.Globalization;
using System.Text;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Html;

/// <summary>The blocks of a document as landmarks, sections, figures and tables.</summary>
/// <param name="blocks">The blocks, pages in their fullest form.</param>
internal sealed class HtmlBody(IReadOnlyList<Block> blocks)
{
    private readonly HtmlText html = new();
    private int headings;
    private int drawings;
    private bool isInSection;

    /// <summary>The markup from the header to the end of the main part.</summary>
    public string Write()
    {
        // What stands before the first part is the report's head.
        var head = blocks.TakeWhile(block => block is not Heading { Level: > 1 }).ToArray();
        html.Raw("<header>\n");
        foreach (var block in head)
        {
            Add(block);
        }

        html.Raw("</header>\n");
        Contents();
        html.Raw("<main id=\"report\">\n");
        foreach (var block in blocks.Skip(head.Length))
        {
            Add(block);
        }

        CloseSection();
        html.Raw("</main>\n");
        return html.ToString();
    }

    private void Contents()
    {
        var parts = blocks.OfType<Heading>().ToArray();
        if (parts.Count(part => part.Level == 2) < 3)
        {
            return;
        }

        html.Raw("<nav aria-label=\"Contents\">\n<ul>\n");
        for (var i = 0; i < parts.Length; i++)
        {
            if (parts[i].Level == 2)
            {
                html.Raw("<li>").Element("a", parts[i].Text, $"href=\"#{Id(i + 1)}\"").Raw("</li>\n");
            }
        }

        html.Raw("</ul>\n</nav>\n");
    }

    private void Add(Block block)
    {
        switch (block)
        {
            case Heading heading:
                AddHeading(heading);
                break;
            case Paragraph paragraph:
                html.Element("p", paragraph.Text, paragraph.Size switch
                {
                    TextSize.Lead => "class=\"lead\"",
                    TextSize.Small => "class=\"small\"",
                    _ => "",
                });
                break;
            case KeyFacts facts:
                html.Raw("<dl class=\"facts\">\n");
                foreach (var fact in facts.Facts)
                {
                    html.Raw("<div>").Element("dt", fact.Name).Element("dd", fact.Value).Raw("</div>\n");
                }

                html.Raw("</dl>\n");
                break;
            case MarkedSentences sentences:
                AddSentences(sentences);
                break;
            case BulletList list:
                html.Raw("<ul>\n");
                foreach (var item in list.Items)
                {
                    html.Element("li", item);
                }

                html.Raw("</ul>\n");
                break;
            case Table table:
                AddTable(table);
                break;
            case FormGrid form:
                AddForm(form);
                break;
            case NumberedQuestion question:
                html.Element("p", RichText.Of($"{NumberText.Count(question.Number)}. ", Emphasis.Strong).Then(question.Text), "class=\"question\"");
                break;
            case AnswerRoom room:
                AddRoom(room);
                break;
            case FigureBlock figure:
                AddFigure(figure);
                break;
            case Note note:
                AddNote(note);
                break;
            case Rule:
                html.Raw("<hr>\n");
                break;
            case Space or PageBreak:
                break;
            default:
                throw new NotSupportedException($"A page has no way to show a {block.GetType().Name}.");
        }
    }

    private static string Id(int number) => string.Create(CultureInfo.InvariantCulture, $"h{number}");

    private void AddHeading(Heading heading)
    {
        var id = Id(++headings);
        if (heading.Level == 2)
        {
            CloseSection();
            html.Raw($"<section aria-labelledby=\"{id}\">\n");
            isInSection = true;
        }

        html.Element(string.Create(CultureInfo.InvariantCulture, $"h{heading.Level}"), heading.Text, $"id=\"{id}\"");
    }

    private void CloseSection()
    {
        html.Raw(isInSection ? "</section>\n" : "");
        isInSection = false;
    }

    private void AddSentences(MarkedSentences block)
    {
        if (block.Sentences.Any(sentence => sentence.Mark is not null))
        {
            html.Raw("<p class=\"scale\" aria-hidden=\"true\"><span>").Element("span", block.LeftOfZero).Element("span", block.RightOfZero).Raw("</span></p>\n");
        }

        html.Raw("<ul class=\"answers\">\n");
        foreach (var sentence in block.Sentences)
        {
            html.Raw("<li><span>").Text(sentence.Text).Raw("</span>");
            html.Raw(sentence.Mark is { } mark ? HtmlMark.Of(mark) : "").Raw("</li>\n");
        }

        html.Raw("</ul>\n");
    }

    private void AddTable(Table table)
    {
        var name = HtmlText.Escape(table.Caption ?? string.Join(", ", table.Columns.Select(column => column.Header)));
        html.Raw($"<div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-label=\"{name}\">\n<table{(table.IsForm ? " class=\"form\"" : "")}>\n");
        if (table.Caption is { Length: > 0 } caption)
        {
            html.Element("caption", caption);
        }

        html.Raw("<thead>\n<tr>");
        foreach (var column in table.Columns)
        {
            html.Raw($"<th scope=\"col\"{Class(column.Alignment)}>").Text(column.Header);
            html.Raw(column.Unit is { } unit ? $" <small>{HtmlText.Escape(unit)}</small></th>" : "</th>");
        }

        html.Raw("</tr>\n</thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            html.Raw(row.Strong ? "<tr class=\"strong\">" : "<tr>");
            for (var i = 0; i < row.Cells.Count; i++)
            {
                var (tag, scope) = i == 0 ? ("th", " scope=\"row\"") : ("td", "");
                html.Raw($"<{tag}{scope}{Class(table.Columns[i].Alignment)}>").Text(row.Cells[i]).Raw($"</{tag}>");
            }

            html.Raw("</tr>\n");
        }

        html.Raw("</tbody>\n</table>\n</div>\n");
        if (table.Note is { } note)
        {
            html.Element("p", note, "class=\"note\"");
        }
    }

    private void AddForm(FormGrid form)
    {
        var name = HtmlText.Escape(string.Join(", ", form.Columns.Select(column => column.Header)));
        html.Raw($"<div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-label=\"{name}\">\n<table class=\"form\">\n<thead>\n<tr>");
        foreach (var column in form.Columns)
        {
            html.Raw("<th scope=\"col\">").Text(column.Header).Raw("</th>");
        }

        html.Raw("</tr>\n</thead>\n<tbody>\n");
        foreach (var row in form.Rows)
        {
            html.Raw("<tr>");
            foreach (var cell in row)
            {
                html.Raw("<td>").Text(cell).Raw("</td>");
            }

            html.Raw("</tr>\n");
        }

        html.Raw("</tbody>\n</table>\n</div>\n");
    }

    private void AddRoom(AnswerRoom room)
    {
        html.Raw("<div class=\"room\">\n");
        foreach (var _ in Enumerable.Range(0, room.Lines))
        {
            html.Raw("<div class=\"line\"></div>\n");
        }

        foreach (var answer in room.Answers)
        {
            html.Raw("<span class=\"ask\">").Text(answer).Raw(" <span class=\"box\"></span></span>\n");
        }

        html.Raw("</div>\n");
    }

    private static string Class(ColumnAlignment alignment) => alignment switch
    {
        ColumnAlignment.Right => " class=\"r\"",
        ColumnAlignment.Centre => " class=\"c\"",
        _ => "",
    };

    private void AddFigure(FigureBlock block)
    {
        html.Raw("<figure>\n");
        if (block.Caption is { Length: > 0 } caption)
        {
            html.Element("figcaption", caption);
        }

        var (wide, narrow) = HtmlReport.FigureWidths;
        html.Raw($"<div class=\"draw wide\">{Drawing(block, wide)}</div>\n<div class=\"draw narrow\">{Drawing(block, narrow)}</div>\n");
        if (block.Note is { } note)
        {
            html.Element("p", note, "class=\"note\"");
        }

        html.Raw("</figure>\n");
    }

    private string Drawing(FigureBlock block, double width)
    {
        using var stream = new MemoryStream();
        FigureFiles.WriteSvg(block.Figure, stream, width, string.Create(CultureInfo.InvariantCulture, $"d{++drawings}"));
        var svg = Encoding.UTF8.GetString(stream.ToArray());
        return svg[svg.IndexOf("<svg", StringComparison.Ordinal)..].TrimEnd();
    }

    private void AddNote(Note note)
    {
        var (kind, word) = note.Weight switch
        {
            NoteWeight.Grave => ("grave", "Do not rely on this: "),
            NoteWeight.Doubt => ("doubt", ""),
            _ => ("remark", ""),
        };
        html.Raw($"<aside class=\"{kind}\">\n").Element("p", RichText.Of(word + note.Heading, Emphasis.Strong)).Element("p", note.Text).Raw("</aside>\n");
    }
}
