using SkiaSharp;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Pdf;

/// <summary>Turns the blocks of a document into the slabs of one endless column.</summary>
/// <param name="width">Width of the column.</param>
/// <param name="height">Height of a page's column, which no slab exceeds.</param>
internal sealed class BlockFlow(double width, double height)
{
    private const double ParagraphSpace = 8;

    private readonly List<Slab> slabs = [];

    /// <summary>The slabs of the blocks.</summary>
    public IReadOnlyList<Slab> Flow(IReadOnlyList<Block> blocks)
    {
        var beginsPage = false;
        foreach (var block in blocks)
        {
            if (block is PageBreak)
            {
                beginsPage = slabs.Count > 0;
                continue;
            }

            var first = slabs.Count;
            if (block is OnePage page)
            {
                beginsPage |= slabs.Count > 0;
                slabs.AddRange(PageFit.Slabs(page, width, height));
            }
            else
            {
                Add(block);
            }

            if (beginsPage && slabs.Count > first)
            {
                slabs[first] = slabs[first] with { BeginsPage = true };
                beginsPage = false;
            }

            beginsPage |= block is OnePage;
        }

        return slabs;
    }

    private void Add(Block block)
    {
        switch (block)
        {
            case Heading heading:
                AddHeading(heading);
                break;
            case Paragraph paragraph:
                var size = PageStyle.Size(paragraph.Size);
                var color = paragraph.Size == TextSize.Small ? FigureStyle.Quiet : FigureStyle.Ink;
                AddText(LineBreaker.Fragments(paragraph.Text, strong: false, color), size, 0, TagKind.Paragraph, ParagraphSpace);
                break;
            case KeyFacts facts:
                AddFacts(facts);
                break;
            case MarkedSentences sentences:
                AddSentences(sentences);
                break;
            case BulletList list:
                AddList(list);
                break;
            case Table table:
                slabs.AddRange(new TableFlow(table, width, height).Slabs());
                break;
            case FormGrid form:
                slabs.AddRange(new FormFlow(form, width).Slabs());
                break;
            case NumberedQuestion question:
                slabs.AddRange(new ExerciseFlow(width).Slabs(question));
                break;
            case AnswerRoom room:
                slabs.AddRange(new ExerciseFlow(width).Slabs(room));
                break;
            case FigureBlock figure:
                AddFigure(figure);
                break;
            case Note note:
                AddNote(note);
                break;
            case Rule:
                slabs.Add(new Slab(6.6, [new PlacedFill(new Box(0, 0, width, 0.6), FigureStyle.Axis)]) { SpaceBefore = 14 });
                break;
            case Space space:
                slabs.Add(new Slab(0, []) { SpaceBefore = space.Points });
                break;
            default:
                throw new NotSupportedException($"A page has no way to show a {block.GetType().Name}.");
        }
    }

    private void AddHeading(Heading heading)
    {
        var kind = heading.Level switch
        {
            1 => TagKind.Heading1,
            2 => TagKind.Heading2,
            _ => TagKind.Heading3,
        };
        var size = PageStyle.HeadingSize(heading.Level);
        var lines = TextFlow.Slabs(
            LineBreaker.Fragments(heading.Text, strong: true, FigureStyle.Ink), size, 0, width, new Tag(kind), leading: 1.2);
        lines[0] = lines[0] with
        {
            SpaceBefore = PageStyle.HeadingSpace(heading.Level),
            Outline = new OutlineEntry(heading.Level, PrintableText.Clean(heading.Text)),
        };
        slabs.AddRange(lines.Select(line => line with { KeepWithNext = true }));
    }

    private void AddText(IReadOnlyList<Fragment> text, double size, double x, TagKind kind, double spaceBefore)
    {
        var measure = Math.Min(width, PageStyle.Measure * Math.Max(1, size / PageStyle.Body)) - x;
        AddLines(TextFlow.Slabs(text, size, x, measure, new Tag(kind)), spaceBefore);
    }

    private void AddLines(List<Slab> lines, double spaceBefore)
    {
        lines[0] = lines[0] with { SpaceBefore = spaceBefore };
        slabs.AddRange(lines);
    }

    // Names are quiet and values are not; the line breaks between facts before it breaks within one.
    private void AddFacts(KeyFacts facts)
    {
        var fragments = facts.Facts.SelectMany((fact, i) =>
        {
            var text = RichText.Of($"{Unbroken(fact.Name)}\u00A0", Emphasis.Quiet).Then(Unbroken(fact.Value));
            return LineBreaker.Fragments(i == facts.Facts.Count - 1 ? text : text.Then("      "), strong: false, FigureStyle.Ink);
        });
        AddLines(TextFlow.Slabs([.. fragments], PageStyle.Cell, 0, width, new Tag(TagKind.Paragraph), leading: 1.5), ParagraphSpace);
    }

    private static string Unbroken(string text) => text.Replace(' ', '\u00A0');

    private void AddSentences(MarkedSentences block)
    {
        var hasMarks = block.Sentences.Any(sentence => sentence.Mark is not null);
        var textWidth = hasMarks ? width - PageStyle.MarkWidth - PageStyle.MarkGap : Math.Min(width, PageStyle.Measure);
        var markLeft = width - PageStyle.MarkWidth;
        var zero = markLeft + (PageStyle.MarkWidth / 2);
        var rows = new List<Slab>();
        if (hasMarks)
        {
            rows.Add(MarkScaleHead(block, zero));
        }

        for (var i = 0; i < block.Sentences.Count; i++)
        {
            var sentence = block.Sentences[i];
            var lines = TextFlow.Slabs(
                LineBreaker.Fragments(sentence.Text, strong: false, FigureStyle.Ink), PageStyle.Body, 0, textWidth, new Tag(TagKind.Paragraph));
            var gap = i == block.Sentences.Count - 1 ? 0 : 7;
            rows.AddRange(SentenceRows(lines, sentence.Mark, gap, hasMarks ? zero : null));
        }

        rows[0] = rows[0] with { SpaceBefore = ParagraphSpace + 2 };
        slabs.AddRange(rows);
    }

    private static Slab MarkScaleHead(MarkedSentences block, double zero)
    {
        const double size = PageStyle.Small;
        const double leading = 1.2;
        const double gap = 7;
        const double room = (PageStyle.MarkWidth / 2) - gap;
        var left = LineBreaker.Break(LineBreaker.Fragments(block.LeftOfZero, strong: false, FigureStyle.Quiet), size, room);
        var right = LineBreaker.Break(LineBreaker.Fragments(block.RightOfZero, strong: false, FigureStyle.Quiet), size, room);
        var count = Math.Max(left.Count, right.Count);
        var height = (count * size * leading) + 5;
        var items = new List<PlacedItem> { new PlacedFill(new Box(zero - 0.3, 2, 0.6, height - 2), FigureStyle.Axis) };
        foreach (var (lines, isLeft) in new[] { (left, true), (right, false) })
        {
            var tag = new Tag(TagKind.Paragraph);
            for (var i = 0; i < lines.Count; i++)
            {
                var x = isLeft ? zero - gap - LineBreaker.Width(lines[i], size) : zero + gap;
                var baseline = ((count - lines.Count + i) * size * leading) + TextFlow.Baseline(size, leading);
                items.AddRange(TextFlow.Place(lines[i], size, x, baseline, tag));
            }
        }

        return new Slab(height, items) { KeepWithNext = true };
    }

    // The zero line runs unbroken past all sentences; the mark stands beside the first line of its own.
    private static IEnumerable<Slab> SentenceRows(List<Slab> lines, IntervalMark? mark, double gap, double? zero)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var height = lines[i].Height + (i == lines.Count - 1 ? gap : 0);
            var items = new List<PlacedItem>(lines[i].Items);
            if (zero is { } x)
            {
                items.Add(new PlacedFill(new Box(x - 0.3, 0, 0.6, height), FigureStyle.Axis));
                if (i == 0 && mark is not null)
                {
                    items.Add(new PlacedMark(new Box(x - (PageStyle.MarkWidth / 2), 0, PageStyle.MarkWidth, lines[i].Height), mark));
                }
            }

            yield return lines[i] with { Height = height, Items = items };
        }
    }

    private void AddList(BulletList list)
    {
        const double indent = 14;
        var tag = new Tag(TagKind.List);
        foreach (var text in list.Items)
        {
            var item = new Tag(TagKind.ListItem, tag);
            var lines = TextFlow.Slabs(
                LineBreaker.Fragments(text, strong: false, FigureStyle.Ink),
                PageStyle.Body,
                indent,
                Math.Min(width, PageStyle.Measure) - indent,
                new Tag(TagKind.ListBody, item));
            var bullet = PlacedText.At(
                2, TextFlow.Baseline(PageStyle.Body), new Tag(TagKind.ListLabel, item), "•", BundledFace.Regular, PageStyle.Body, FigureStyle.Quiet);
            lines[0] = lines[0] with { Items = [bullet, .. lines[0].Items] };
            AddLines(lines, ReferenceEquals(text, list.Items[0]) ? ParagraphSpace : 4);
        }
    }

    private void AddFigure(FigureBlock block)
    {
        var tag = new Tag(TagKind.Figure, alternative: PrintableText.Clean(block.Figure.AltText));
        var caption = block.Caption is null
            ? []
            : TextFlow.Slabs(block.Caption, strong: true, FigureStyle.Ink, PageStyle.Cell + 0.5, 0, Math.Min(width, PageStyle.Measure), new Tag(TagKind.Paragraph, new Tag(TagKind.Caption)));
        var note = block.Note is null
            ? []
            : TextFlow.Slabs(block.Note, strong: false, FigureStyle.Quiet, PageStyle.Small, 0, Math.Min(width, PageStyle.Measure), new Tag(TagKind.Paragraph));
        var room = height - caption.Sum(line => line.Height) - note.Sum(line => line.Height) - 16;
        var wanted = block.Height ?? block.Figure.HeightAt(width);
        var figureHeight = Math.Clamp(wanted, 40, Math.Max(40, room));
        var figure = new Slab(figureHeight, [new PlacedFigure(new Box(0, 0, width, figureHeight), tag, block.Figure)])
        {
            SpaceBefore = caption.Count == 0 ? 14 : 6,
            KeepWithNext = note.Count > 0,
        };
        if (caption.Count > 0)
        {
            AddLines([.. caption.Select(line => line with { KeepWithNext = true })], 16);
        }

        slabs.Add(figure);
        if (note.Count > 0)
        {
            AddLines(note, 3);
        }
    }

    // A bar down the left edge carries the weight; in print without colour its width does.
    private void AddNote(Note note)
    {
        const double indent = 13;
        var (bar, color, word) = NoteLook(note.Weight);
        var measure = Math.Min(width, PageStyle.Measure) - indent;
        var tag = new Tag(TagKind.Paragraph);
        var heading = RichText.Of(word, Emphasis.Strong).Then(note.Heading, Emphasis.Strong);
        List<Slab> lines =
        [
            .. TextFlow.Slabs(LineBreaker.Fragments(heading, strong: true, FigureStyle.Ink), PageStyle.Body, indent, measure, tag)
                .Select(line => line with { KeepWithNext = true }),
            .. TextFlow.Slabs(LineBreaker.Fragments(note.Text, strong: false, FigureStyle.Ink), PageStyle.Body, indent, measure, new Tag(TagKind.Paragraph)),
        ];
        AddLines(
            [.. lines.Select(line => line with { Items = [new PlacedFill(new Box(0, 0, bar, line.Height), color), .. line.Items] })],
            11);
    }

    private static (double Bar, SKColor Color, string Word) NoteLook(NoteWeight weight) => weight switch
    {
        NoteWeight.Grave => (5, FigureStyle.Treatments[1], "Do not rely on this: "),
        NoteWeight.Doubt => (2.5, FigureStyle.Treatments[1], string.Empty),
        _ => (1, FigureStyle.Axis, string.Empty),
    };
}
