using SkiaSharp;

namespace TrialKit.Reporting.Figures;

/// <summary>The strips side by side as they lie across the field: each with the letter of its treatment, blocks bracketed above, a key below.</summary>
/// <param name="cells">The strips in field order, one or more.</param>
/// <param name="key">The treatments that the strips refer to.</param>
/// <param name="altText">The layout in words.</param>
public sealed class DesignMapFigure(IReadOnlyList<MapCell> cells, IReadOnlyList<MapKey> key, string altText) : IFigure
{
    private const float BlockRow = 15;
    private const float StripHeight = 34;
    private const float NameRow = 14;
    private const float Gap = 10;
    private const float KeyRow = 15;
    private const float LeastSlot = 15;
    private const float WidestSlot = 44;
    private const float Inset = 0.8f;
    private const int Letters = 26;

    private readonly IReadOnlyList<MapCell> cells = Check(cells, key);

    /// <inheritdoc/>
    public string AltText { get; } = altText;

    /// <inheritdoc/>
    public double Aspect => HeightAt(FigureFiles.DefaultWidth) / FigureFiles.DefaultWidth;

    /// <inheritdoc/>
    public double HeightAt(double width) =>
        (Rows(width) * (BlockRow + StripHeight + NameRow + Gap)) + (KeyLines((float)width).Count * KeyRow) + 4;

    /// <inheritdoc/>
    public void Draw(SKCanvas canvas, SKRect area)
    {
        ArgumentNullException.ThrowIfNull(canvas);
        var pen = new Pen(canvas);
        var rows = Rows(area.Width);
        var perRow = (int)Math.Ceiling((double)cells.Count / rows);
        var slot = Math.Min(WidestSlot, area.Width / perRow);
        var y = area.Top;
        for (var row = 0; row < rows; row++)
        {
            DrawRow(pen, [.. cells.Skip(row * perRow).Take(perRow)], area.Left, y, slot);
            y += BlockRow + StripHeight + NameRow + Gap;
        }

        foreach (var line in KeyLines(area.Width))
        {
            foreach (var (index, x, name) in line)
            {
                var middle = y + (KeyRow / 2);
                DrawBox(pen, new SKRect(area.Left + x, middle - 6, area.Left + x + 14, middle + 6), key[index].Tone, Letter(index));
                pen.Text(name, area.Left + x + 19, middle, FigureStyle.Ink);
            }

            y += KeyRow;
        }
    }

    private void DrawRow(Pen pen, MapCell[] row, float left, float top, float slot)
    {
        var strips = top + BlockRow;
        for (var i = 0; i < row.Length; i++)
        {
            var box = new SKRect(left + (i * slot) + Inset, strips, left + ((i + 1) * slot) - Inset, strips + StripHeight);
            if (row[i].IsAnalysed)
            {
                DrawBox(pen, box, key[row[i].Treatment].Tone, Letter(row[i].Treatment));
            }
            else
            {
                pen.Box(box, FigureStyle.Wash);
                pen.Line(box.Left, box.Bottom, box.Right, box.Top, FigureStyle.Axis, FigureStyle.HairStroke);
                pen.Text(Letter(row[i].Treatment), box.MidX, box.MidY, FigureStyle.Quiet, place: TextPlace.Middle);
            }
        }

        DrawNames(pen, row, left, strips + StripHeight + (NameRow / 2) + 1, slot);
        for (var first = 0; first < row.Length;)
        {
            var count = row.Skip(first).TakeWhile(cell => cell.Block == row[first].Block).Count();
            var (from, to) = (left + (first * slot) + Inset, left + ((first + count) * slot) - Inset);
            pen.Line(from, strips - 3, to, strips - 3, FigureStyle.Axis, FigureStyle.HairStroke);
            pen.Text(Pen.Shorten(row[first].Block, to - from - 1), (from + to) / 2, strips - 10, FigureStyle.Quiet, place: TextPlace.Middle);
            first += count;
        }
    }

    // Where names are wider than strips, every second or third is printed.
    private static void DrawNames(Pen pen, MapCell[] row, float left, float middle, float slot)
    {
        var every = Math.Max(1, (int)Math.Ceiling((row.Max(cell => Pen.Width(cell.Name)) + 3) / slot));
        for (var i = 0; i < row.Length; i += every)
        {
            var room = Math.Min(every, row.Length - i) * slot;
            var name = Pen.Shorten(row[i].Name, every == 1 ? slot : room);
            if (every == 1)
            {
                pen.Text(name, left + ((i + 0.5f) * slot), middle, FigureStyle.Quiet, place: TextPlace.Middle);
            }
            else
            {
                pen.Text(name, left + (i * slot) + Inset, middle, FigureStyle.Quiet);
            }
        }
    }

    private static void DrawBox(Pen pen, SKRect box, int tone, string letter)
    {
        pen.Box(box, FigureStyle.Tone(tone));
        pen.Text(letter, box.MidX, box.MidY, tone == 0 ? FigureStyle.Ink : SKColors.White, place: TextPlace.Middle, strong: true);
    }

    private int Rows(double width) => (int)Math.Ceiling(cells.Count / Math.Max(1, Math.Floor(width / LeastSlot)));

    private List<List<(int Index, float X, string Name)>> KeyLines(float width)
    {
        var lines = new List<List<(int, float, string)>> { new() };
        var x = 0f;
        for (var i = 0; i < key.Count; i++)
        {
            var name = Pen.Shorten(key[i].Name, width - 20);
            var room = 19 + Pen.Width(name);
            if (x > 0 && x + room > width)
            {
                lines.Add([]);
                x = 0;
            }

            lines[^1].Add((i, x, name));
            x += room + 16;
        }

        return lines;
    }

    private static string Letter(int treatment) => ((char)('A' + (treatment % Letters))).ToString();

    private static IReadOnlyList<MapCell> Check(IReadOnlyList<MapCell> cells, IReadOnlyList<MapKey> key)
    {
        ArgumentNullException.ThrowIfNull(cells);
        ArgumentNullException.ThrowIfNull(key);
        if (cells.Count == 0 || cells.Any(cell => cell.Treatment < 0 || cell.Treatment >= key.Count))
        {
            throw new ArgumentException(FormattableString.Invariant($"A design map has one strip or more, each of one of the {key.Count} treatments of its key."), nameof(cells));
        }

        foreach (var each in key)
        {
            FigureStyle.CheckTone(each.Tone);
        }

        return cells;
    }
}
