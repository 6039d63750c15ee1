using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Pdf;

/// <summary>Turns what is particular to exercise sheets into slabs: numbered questions and room to answer them.</summary>
/// <param name="width">Width of the page's column.</param>
internal sealed class ExerciseFlow(double width)
{
    private const double Indent = 20;
    private const double LineHeight = 23;
    private const double BoxRow = 30;
    private const double BoxWidth = 86;
    private const double BoxHeight = 23;
    private const double Gap = 6;
    private const double Between = 22;
    private const double Hair = 0.6;

    /// <summary>The slabs of a question.</summary>
    public IEnumerable<Slab> Slabs(NumberedQuestion question)
    {
        var tag = new Tag(TagKind.Paragraph);
        var measure = Math.Min(width, PageStyle.Measure + Indent) - Indent;
        var lines = TextFlow.Slabs(LineBreaker.Fragments(question.Text, strong: false, FigureStyle.Ink), PageStyle.Body, Indent, measure, tag);
        var number = PlacedText.At(0, TextFlow.Baseline(PageStyle.Body), tag, NumberText.Count(question.Number) + ". ", BundledFace.SemiBold, PageStyle.Body, FigureStyle.Ink);
        lines[0] = lines[0] with { SpaceBefore = 15, Items = [number, .. lines[0].Items] };
        return lines.Select(line => line with { KeepWithNext = true });
    }

    /// <summary>The slabs of the room for an answer, which stay together: one for each line, and one for each row of boxes.</summary>
    public IEnumerable<Slab> Slabs(AnswerRoom room)
    {
        Slab[] slabs = [.. Enumerable.Range(0, room.Lines).Select(_ => Line()), .. Rows(room.Answers)];
        return slabs.Select((slab, i) => slab with { KeepWithNext = i < slabs.Length - 1 || room.StaysWithNext });
    }

    private Slab Line() => new(LineHeight, [new PlacedFill(new Box(Indent, LineHeight - Hair, width - Indent, Hair), FigureStyle.Grid)]);

    private IEnumerable<Slab> Rows(IReadOnlyList<string> answers)
    {
        var items = new List<PlacedItem>();
        var x = Indent;
        foreach (var answer in answers)
        {
            var text = TextMeasure.Shorten(PrintableText.Clean(answer), BundledFace.Regular, PageStyle.Cell, width - Indent - BoxWidth - Gap);
            var label = TextMeasure.Width(text, BundledFace.Regular, PageStyle.Cell);
            if (x > Indent && x + label + Gap + BoxWidth > width)
            {
                yield return Row(items);
                (items, x) = ([], Indent);
            }

            var baseline = BoxRow - (BoxHeight / 2) + (PageStyle.Cell * TextMeasure.CapHeight / 2);
            items.Add(PlacedText.At(x, baseline, new Tag(TagKind.Paragraph), text, BundledFace.Regular, PageStyle.Cell, FigureStyle.Ink));
            items.AddRange(Sides(new Box(x + label + Gap, BoxRow - BoxHeight, BoxWidth, BoxHeight)));
            x += label + Gap + BoxWidth + Between;
        }

        if (items.Count > 0)
        {
            yield return Row(items);
        }
    }

    private static Slab Row(List<PlacedItem> items) => new(BoxRow, items);

    private static IEnumerable<PlacedItem> Sides(Box box)
    {
        yield return new PlacedFill(new Box(box.X, box.Y, box.Width, Hair), FigureStyle.Axis);
        yield return new PlacedFill(new Box(box.X, box.Bottom - Hair, box.Width, Hair), FigureStyle.Axis);
        yield return new PlacedFill(new Box(box.X, box.Y, Hair, box.Height), FigureStyle.Axis);
        yield return new PlacedFill(new Box(box.Right - Hair, box.Y, Hair, box.Height), FigureStyle.Axis);
    }
}
