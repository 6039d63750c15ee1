using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Pdf;

/// <summary>Turns a table into slabs: a caption, a head that is repeated, one slab for each row, a note.</summary>
/// <param name="table">The table.</param>
/// <param name="width">Width of the page's column.</param>
/// <param name="height">Height of the page's column.</param>
internal sealed class TableFlow(Table table, double width, double height)
{
    private const double CellPadding = 2.6;
    private const double RuleWidth = 0.6;
    private const double LineHeight = 1.28;
    private const double FormRoom = 5;
    private const int ShortTable = 6;
    private const double BoxInset = 1.6;

    private readonly Tag tag = new(TagKind.Table);

    /// <summary>The slabs of the table.</summary>
    public IReadOnlyList<Slab> Slabs()
    {
        var (columns, size) = FitColumns(table, width);
        var slabs = new List<Slab>();
        if (table.Caption is { } caption)
        {
            slabs.AddRange(TextFlow.Slabs(
                    caption, strong: true, FigureStyle.Ink, PageStyle.Cell + 0.5, 0, Math.Min(width, PageStyle.Measure), new Tag(TagKind.Paragraph, new Tag(TagKind.Caption)))
                .Select(line => line with { KeepWithNext = true }));
            slabs[0] = slabs[0] with { SpaceBefore = 16 };
        }

        var head = Head(columns, size);
        head[0] = head[0] with { SpaceBefore = slabs.Count == 0 ? 14 : 3 };

        // A head that fills much of a page by itself is printed once.
        var repeated = head.Count > 1 || head[0].Height > height / 3 ? null : Undressed(head[0]);
        var body = table.Rows.SelectMany(row => Row(row, columns, size, height - (repeated?.Height ?? 0))).ToList();
        head[^1] = head[^1] with { KeepWithNext = body.Count > 0 };
        slabs.AddRange(head);
        slabs.AddRange(body.Select((row, i) => row with
        {
            RepeatedHead = repeated,
            KeepWithNext = row.KeepWithNext || KeepsWithNext(i, body.Count) || (i == body.Count - 1 && table.Note is not null),
        }));
        if (table.Note is { } note)
        {
            var lines = TextFlow.Slabs(
                note, strong: false, FigureStyle.Quiet, PageStyle.Small, 0, Math.Min(width, PageStyle.Measure), new Tag(TagKind.Paragraph));
            lines[0] = lines[0] with { SpaceBefore = 4 };
            slabs.AddRange(lines);
        }

        return slabs;
    }

    // No row stands alone on a page, and a short table is not broken.
    private static bool KeepsWithNext(int row, int rows) => row < rows - 1 && (row == 0 || row == rows - 2 || rows <= ShortTable);

    /// <summary>The left edges and widths of the columns, and the size of the text.</summary>
    /// <remarks>
    /// Columns take their natural width where there is room. Where there is not, each keeps what its longest word needs
    /// and the rest is shared in proportion; where even that is too much, words are broken.
    /// </remarks>
    internal static (IReadOnlyList<(double X, double Width)> Columns, double Size) FitColumns(Table table, double width)
    {
        const double size = PageStyle.Cell;
        var natural = table.Columns.Select((_, i) => Texts(table, i).Max(text => LineBreaker.Width(text, size))).ToArray();
        var least = table.Columns.Select((_, i) => Texts(table, i).Max(text => LineBreaker.WidestWord(text, size))).ToArray();
        var gaps = table.Columns.Count - 1;
        if (natural.Sum() + (gaps * 10) <= width)
        {
            var gap = gaps == 0 ? 0 : Math.Min(26, (width - natural.Sum()) / gaps);
            return (Edges(natural, gap), size);
        }

        const double tightGap = 8;
        var room = width - (gaps * tightGap);
        if (least.Sum() <= room)
        {
            // Where every cell is one word, none wishes for more.
            var wish = natural.Zip(least, (wide, narrow) => wide - narrow).ToArray();
            var share = wish.Sum() > 0 ? (room - least.Sum()) / wish.Sum() : 0;
            return (Edges([.. least.Zip(wish, (narrow, more) => narrow + (share * more))], tightGap), size);
        }

        // Long words give way first: columns are cut to a common width until the sum fits.
        const double narrowGap = 5;
        room = width - (gaps * narrowGap);
        return (Edges([.. CutToFit(least, room)], narrowGap), PageStyle.Small);
    }

    private static IEnumerable<double> CutToFit(double[] widths, double room)
    {
        var left = room;
        var count = widths.Length;
        var limit = room / count;
        foreach (var narrow in widths.Order())
        {
            if (narrow > left / count)
            {
                limit = left / count;
                break;
            }

            left -= narrow;
            count--;
        }

        return widths.Select(each => Math.Min(each, limit));
    }

    private static List<(double X, double Width)> Edges(double[] widths, double gap)
    {
        var edges = new List<(double, double)>();
        var x = 0.0;
        foreach (var each in widths)
        {
            edges.Add((x, each));
            x += each + gap;
        }

        return edges;
    }

    private static IEnumerable<IReadOnlyList<Fragment>> Texts(Table table, int column)
    {
        var head = table.Columns[column];
        yield return LineBreaker.Fragments(head.Header, strong: true, FigureStyle.Ink);
        if (head.Unit is not null)
        {
            yield return LineBreaker.Fragments(head.Unit, strong: false, FigureStyle.Quiet);
        }

        foreach (var row in table.Rows)
        {
            yield return LineBreaker.Fragments(row.Cells[column], row.Strong, FigureStyle.Ink);
        }
    }

    private List<Slab> Head(IReadOnlyList<(double X, double Width)> columns, double size)
    {
        var row = new Tag(TagKind.TableRow, tag);
        var cells = table.Columns.Select((column, i) =>
        {
            var lines = LineBreaker.Break(LineBreaker.Fragments(column.Header, strong: true, FigureStyle.Ink), size, columns[i].Width).ToList();
            if (column.Unit is { } unit)
            {
                // As text, the unit is a word of its own.
                lines[^1] = [.. lines[^1], new Fragment(" ", BundledFace.Regular, FigureStyle.Quiet)];
                lines.AddRange(LineBreaker.Break(LineBreaker.Fragments(unit, strong: false, FigureStyle.Quiet), size, columns[i].Width));
            }

            return lines;
        }).ToList();

        // Names stand at the foot of the head, so that those on one line stand above their column.
        var lineCount = cells.Max(lines => lines.Count);
        foreach (var lines in cells)
        {
            lines.InsertRange(0, Enumerable.Repeat<IReadOnlyList<Fragment>>([], lineCount - lines.Count));
        }

        var slabs = Chunks(cells, TagKind.TableHeader, row, columns, size, height).ToList();
        var last = slabs[^1];
        var rule = new PlacedFill(new Box(0, last.Height, TableWidth(columns), RuleWidth), FigureStyle.Axis);
        slabs[^1] = new Slab(last.Height + RuleWidth + 1, [.. last.Items, rule]);
        return slabs;
    }

    private IEnumerable<Slab> Row(TableRow row, IReadOnlyList<(double X, double Width)> columns, double size, double room)
    {
        var cells = row.Cells
            .Select((text, i) => LineBreaker.Break(LineBreaker.Fragments(text, row.Strong, FigureStyle.Ink), size, columns[i].Width).ToList())
            .ToList();
        var rule = RuleWidth / 2;
        var extra = table.IsForm ? FormRoom : 0;
        return Chunks(cells, TagKind.TableCell, new Tag(TagKind.TableRow, tag), columns, size, room - extra).Select(slab => new Slab(
            slab.Height + extra + rule,
            [.. slab.Items, .. Boxes(row, columns, slab.Height + extra), new PlacedFill(new Box(0, slab.Height + extra, TableWidth(columns), rule), FigureStyle.Grid)]));
    }

    /// <summary>The four sides of a box in each empty cell of a form.</summary>
    private IEnumerable<PlacedFill> Boxes(TableRow row, IReadOnlyList<(double X, double Width)> columns, double rowHeight)
    {
        if (!table.IsForm)
        {
            yield break;
        }

        var box = rowHeight - (2 * BoxInset);
        foreach (var (x, room) in columns.Where((_, i) => row.Cells[i].Length == 0))
        {
            yield return new PlacedFill(new Box(x, BoxInset, room, RuleWidth), FigureStyle.Axis);
            yield return new PlacedFill(new Box(x, BoxInset + box - RuleWidth, room, RuleWidth), FigureStyle.Axis);
            yield return new PlacedFill(new Box(x, BoxInset, RuleWidth, box), FigureStyle.Axis);
            yield return new PlacedFill(new Box(x + room - RuleWidth, BoxInset, RuleWidth, box), FigureStyle.Axis);
        }
    }

    // A row higher than the room on a page goes on over pages, so many lines at a time.
    private IEnumerable<Slab> Chunks(
        List<List<IReadOnlyList<Fragment>>> cells,
        TagKind kind,
        Tag row,
        IReadOnlyList<(double X, double Width)> columns,
        double size,
        double room)
    {
        var tags = cells.Select(_ => new Tag(kind, row)).ToList();
        var lineCount = cells.Max(lines => lines.Count);
        var perPage = Math.Max(1, (int)((room - (2 * CellPadding) - (2 * RuleWidth) - 1) / (size * LineHeight)));
        for (var first = 0; first < lineCount; first += perPage)
        {
            var count = Math.Min(perPage, lineCount - first);
            var items = new List<PlacedItem>();
            for (var i = 0; i < cells.Count; i++)
            {
                items.AddRange(Cell([.. cells[i].Skip(first).Take(count)], columns[i], i, size, tags[i]));
            }

            yield return new Slab((count * size * LineHeight) + (2 * CellPadding), items);
        }
    }

    private IEnumerable<PlacedItem> Cell(
        List<IReadOnlyList<Fragment>> lines,
        (double X, double Width) column,
        int index,
        double size,
        Tag cellTag)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var slack = column.Width - LineBreaker.Width(lines[i], size);
            var x = column.X + (table.Columns[index].Alignment switch
            {
                ColumnAlignment.Right => slack,
                ColumnAlignment.Centre => slack / 2,
                _ => 0,
            });
            var baseline = CellPadding + (i * size * LineHeight) + TextFlow.Baseline(size, LineHeight);
            foreach (var item in TextFlow.Place(lines[i], size, x, baseline, cellTag))
            {
                yield return item;
            }
        }
    }

    private static double TableWidth(IReadOnlyList<(double X, double Width)> columns) => columns[^1].X + columns[^1].Width;

    // A repeated head is for the eye; a reader that hears the table has heard it.
    private static Slab Undressed(Slab head) => head with { Items = [.. head.Items.Select(item => item with { Tag = null })] };
}
