using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Pdf;

/// <summary>Chooses the draft of a page that fits a sheet, and gives a figure that can give way the room that is left.</summary>
internal static class PageFit
{
    /// <summary>The slabs of the first draft that fits; of the last one, where none does.</summary>
    /// <param name="page">The drafts.</param>
    /// <param name="width">Width of the column.</param>
    /// <param name="height">Height of a page's column.</param>
    public static IReadOnlyList<Slab> Slabs(OnePage page, double width, double height)
    {
        IReadOnlyList<Slab> slabs = [];
        foreach (var draft in page.Drafts)
        {
            slabs = Flow(draft, extra: 0, width, height);
            var left = height - Used(slabs);
            if (left >= 0)
            {
                return Flow(draft, left, width, height);
            }
        }

        return slabs;
    }

    /// <summary>The height that slabs take on a page of their own.</summary>
    public static double Used(IReadOnlyList<Slab> slabs) =>
        slabs.Sum(slab => slab.Height + slab.SpaceBefore) - (slabs.Count > 0 ? slabs[0].SpaceBefore : 0);

    private static IReadOnlyList<Slab> Flow(IReadOnlyList<Block> draft, double extra, double width, double height)
    {
        var blocks = draft.Select(block =>
        {
            if (block is not FigureBlock { LeastHeight: { } least } figure)
            {
                return block;
            }

            var most = Math.Max(least, figure.Height ?? figure.Figure.HeightAt(width));
            var given = Math.Min(most, least + extra);
            extra -= given - least;
            return figure with { Height = given };
        });
        return new BlockFlow(width, height).Flow([.. blocks]);
    }
}
