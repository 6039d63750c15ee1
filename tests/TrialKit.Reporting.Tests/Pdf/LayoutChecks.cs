using TrialKit.Reporting.Pdf;

namespace TrialKit.Reporting.Tests.Pdf;

/// <summary>What holds of every layout, whatever it lays.</summary>
internal static class LayoutChecks
{
    private const double Hair = 1e-6;

    public static void WithinMargins(PdfLayout layout, string name)
    {
        Assert.NotEmpty(layout.Pages);
        foreach (var (page, number) in layout.Pages.Select((page, i) => (page, i + 1)))
        {
            Assert.All(page.Items, item => Assert.True(
                item.Box.X >= PageStyle.SideMargin - Hair
                && item.Box.Right <= layout.Width - PageStyle.SideMargin + Hair
                && item.Box.Y >= 18
                && item.Box.Bottom <= layout.Height - 18,
                FormattableString.Invariant($"{name}, page {number}: {item} leaves the page")));
        }
    }

    public static void NoTextOverAnother(PdfLayout layout, string name)
    {
        foreach (var page in layout.Pages)
        {
            // Letters without accents and tails, which lines set close may share.
            var solid = page.Items
                .Where(item => item is PlacedText or PlacedFigure or PlacedMark)
                .Select(item => item is PlacedText text
                    ? (Item: item, Box: new Box(text.Box.X, text.Baseline - (0.7 * text.Size), text.Box.Width, 0.7 * text.Size))
                    : (Item: item, item.Box))
                .Select(each => (each.Item, Box: new Box(each.Box.X + Hair, each.Box.Y + Hair, each.Box.Width - (2 * Hair), each.Box.Height - (2 * Hair))))
                .Where(each => each.Box.Width > 0)
                .OrderBy(each => each.Box.Y)
                .ToList();
            for (var i = 0; i < solid.Count; i++)
            {
                for (var j = i + 1; j < solid.Count && solid[j].Box.Y < solid[i].Box.Bottom; j++)
                {
                    Assert.False(solid[i].Box.Overlaps(solid[j].Box), $"{name}: {solid[i].Item} lies over {solid[j].Item}");
                }
            }
        }
    }

    public static void NothingBelowNinePoints(PdfLayout layout, string name) =>
        Assert.All(layout.Pages.SelectMany(page => page.Items).OfType<PlacedText>(), text => Assert.True(text.Size >= 9, $"{name}: {text}"));
}
