using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Pdf;

/// <summary>Cuts the column of slabs into pages and adds running heads and footers.</summary>
internal static class Paginator
{
    /// <summary>The pages of a document.</summary>
    public static PdfLayout Lay(ReportDocument document)
    {
        var (width, height) = PageStyle.Sheet(document.PageSize);
        var columnWidth = width - (2 * PageStyle.SideMargin);
        var columnHeight = height - PageStyle.TopMargin - PageStyle.BottomMargin;
        var pages = new Pages(columnHeight);
        foreach (var group in Groups(new BlockFlow(columnWidth, columnHeight).Flow(document.Blocks)))
        {
            pages.Add(group);
        }

        var laid = pages.Finished
            .Select((page, i) => page with { Items = [.. page.Items, .. Margins(document, i + 1, pages.Finished.Count, width, height)] })
            .ToList();
        return new PdfLayout(width, height, laid);
    }

    private static IEnumerable<IReadOnlyList<Slab>> Groups(IReadOnlyList<Slab> slabs)
    {
        var group = new List<Slab>();
        foreach (var slab in slabs)
        {
            if (slab.BeginsPage && group.Count > 0)
            {
                yield return group;
                group = [];
            }

            group.Add(slab);
            if (!slab.KeepWithNext)
            {
                yield return group;
                group = [];
            }
        }

        if (group.Count > 0)
        {
            yield return group;
        }
    }

    private static IEnumerable<PlacedItem> Margins(ReportDocument document, int page, int pages, double width, double height)
    {
        const double size = PageStyle.Small;
        var inner = width - (2 * PageStyle.SideMargin);
        if (page > 1)
        {
            var title = TextMeasure.Shorten(PrintableText.Clean(document.Title), BundledFace.Regular, size, inner);
            yield return PlacedText.At(PageStyle.SideMargin, PageStyle.HeadBaseline, null, title, BundledFace.Regular, size, FigureStyle.Quiet);
        }

        var count = FormattableString.Invariant($"page {page} of {pages}");
        var countWidth = TextMeasure.Width(count, BundledFace.Regular, size);
        var baseline = height - PageStyle.FooterBaseline;
        var origin = PrintableText.Clean(document.Footer.Words("  ·  "));
        yield return PlacedText.At(
            PageStyle.SideMargin,
            baseline,
            null,
            TextMeasure.Shorten(origin, BundledFace.Regular, size, inner - countWidth - 20),
            BundledFace.Regular,
            size,
            FigureStyle.Quiet);
        yield return PlacedText.At(
            width - PageStyle.SideMargin - countWidth, baseline, null, count, BundledFace.Regular, size, FigureStyle.Quiet);
    }

    /// <summary>The pages as they fill.</summary>
    private sealed class Pages(double columnHeight)
    {
        // A rounding error must not send a line that fits exactly to the next page.
        private const double Slack = 1e-6;

        private readonly List<LaidPage> finished = [];
        private List<PlacedItem> items = [];
        private List<(OutlineEntry, double)> outline = [];
        private double y;

        public List<LaidPage> Finished => items.Count > 0 || finished.Count == 0
            ? [.. finished, new LaidPage(items, outline)]
            : finished;

        public void Add(IReadOnlyList<Slab> group)
        {
            var whole = group.Sum(slab => slab.Height + slab.SpaceBefore);
            if (group[0].BeginsPage || (y > 0 && y + whole > columnHeight + Slack))
            {
                Turn();
            }

            foreach (var slab in group)
            {
                if (y > 0 && y + slab.SpaceBefore + slab.Height > columnHeight + Slack)
                {
                    Turn();
                }

                if (y == 0 && slab.RepeatedHead is { } head && finished.Count > 0)
                {
                    Place(head with { SpaceBefore = 0 });
                }

                Place(slab);
            }
        }

        private void Turn()
        {
            if (items.Count == 0)
            {
                return;
            }

            finished.Add(new LaidPage(items, outline));
            items = [];
            outline = [];
            y = 0;
        }

        private void Place(Slab slab)
        {
            if (y > 0)
            {
                y += slab.SpaceBefore;
            }

            var top = PageStyle.TopMargin + y;
            if (slab.Outline is { } entry)
            {
                outline.Add((entry, top));
            }

            items.AddRange(slab.Items.Select(item => item with { Box = item.Box.Move(PageStyle.SideMargin, top) }));
            y += slab.Height;
        }
    }
}
