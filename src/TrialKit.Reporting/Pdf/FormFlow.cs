using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Pdf;

/// <summary>Turns a form into slabs: a head that is repeated and one ruled slab for each row, large enough for a pencil.</summary>
/// <param name="form">The form.</param>
/// <param name="width">Width of the page's column.</param>
internal sealed class FormFlow(FormGrid form, double width)
{
    private const double RowHeight = 24;
    private const double Padding = 4;
    private const double TextSize = 12;
    private const double HeadSize = PageStyle.Cell;
    private const double HeadLine = 1.2;
    private const double LineWidth = 0.6;

    private readonly Tag tag = new(TagKind.Table);

    /// <summary>The slabs of the form.</summary>
    public IReadOnlyList<Slab> Slabs()
    {
        var columns = Columns();
        var head = Head(columns);
        var repeated = head with { Items = [.. head.Items.Select(item => item with { Tag = null })] };
        var rows = form.Rows.Select((row, i) => Row(row, columns) with { RepeatedHead = repeated, KeepWithNext = i < form.Rows.Count - 1 ? form.IsWhole : form.StaysWithNext });
        return [head with { SpaceBefore = 10, KeepWithNext = form.Rows.Count > 0 }, .. rows];
    }

    private List<(double X, double Width)> Columns()
    {
        var total = form.Columns.Sum(column => column.Share);
        var edges = new List<(double X, double Width)>();
        var x = 0.0;
        foreach (var column in form.Columns)
        {
            edges.Add((x, width * column.Share / total));
            x = edges[^1].X + edges[^1].Width;
        }

        return edges;
    }

    private Slab Head(List<(double X, double Width)> columns)
    {
        var cells = form.Columns
            .Select((column, i) => LineBreaker.Break(LineBreaker.Fragments(column.Header, strong: true, FigureStyle.Ink), HeadSize, columns[i].Width - (2 * Padding)))
            .ToList();
        var height = (cells.Max(lines => lines.Count) * HeadSize * HeadLine) + (2 * Padding);
        var row = new Tag(TagKind.TableRow, tag);
        var items = new List<PlacedItem> { new PlacedFill(new Box(0, 0, width, height), FigureStyle.Wash) };
        items.AddRange(Lines(columns, height));
        items.Add(new PlacedFill(new Box(0, 0, width, LineWidth), FigureStyle.Axis));
        for (var i = 0; i < cells.Count; i++)
        {
            var cell = new Tag(TagKind.TableHeader, row);
            for (var line = 0; line < cells[i].Count; line++)
            {
                items.AddRange(TextFlow.Place(cells[i][line], HeadSize, columns[i].X + Padding, Padding + (line * HeadSize * HeadLine) + TextFlow.Baseline(HeadSize, HeadLine), cell));
            }
        }

        return new Slab(height, items);
    }

    private Slab Row(IReadOnlyList<string> row, List<(double X, double Width)> columns)
    {
        var rowTag = new Tag(TagKind.TableRow, tag);
        var cells = row.Select((text, i) => Cell(text, columns[i].Width - (2 * Padding))).ToList();
        var height = Math.Max(RowHeight, cells.Max(cell => cell.Lines.Count * cell.Size * HeadLine) + (2 * Padding));
        var items = new List<PlacedItem>(Lines(columns, height));
        for (var i = 0; i < row.Count; i++)
        {
            var cell = new Tag(TagKind.TableCell, rowTag);
            var (lines, size) = cells[i];
            var top = (height - (lines.Count * size * HeadLine)) / 2;
            for (var line = 0; line < lines.Count; line++)
            {
                items.AddRange(TextFlow.Place(lines[line], size, columns[i].X + Padding, top + (line * size * HeadLine) + TextFlow.Baseline(size, HeadLine), cell));
            }
        }

        return new Slab(height, items);
    }

    // What is long is set smaller and runs on in further lines: two treatments that differ in their last word must be told apart.
    private static (IReadOnlyList<IReadOnlyList<Fragment>> Lines, double Size) Cell(string text, double room)
    {
        if (text.Length == 0)
        {
            return ([], TextSize);
        }

        var fragments = LineBreaker.Fragments(text, strong: false, FigureStyle.Ink);
        var size = LineBreaker.Width(fragments, TextSize) <= room ? TextSize : PageStyle.Small;
        return (LineBreaker.Break(fragments, size, room), size);
    }

    private IEnumerable<PlacedItem> Lines(List<(double X, double Width)> columns, double height)
    {
        foreach (var (x, _) in columns)
        {
            yield return new PlacedFill(new Box(x, 0, LineWidth, height), FigureStyle.Axis);
        }

        yield return new PlacedFill(new Box(width - LineWidth, 0, LineWidth, height), FigureStyle.Axis);
        yield return new PlacedFill(new Box(0, height - LineWidth, width, LineWidth), FigureStyle.Axis);
    }
}
