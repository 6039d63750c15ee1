using SkiaSharp;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Pdf;

/// <summary>Something that stands at a place of a page.</summary>
/// <param name="Box">The room it takes.</param>
/// <param name="Tag">What it belongs to; null for decoration and for what is repeated on each page.</param>
internal abstract record PlacedItem(Box Box, Tag? Tag);

/// <summary>Text on one line, in one face.</summary>
/// <param name="Box">The room it takes: its width, and its letters' height.</param>
/// <param name="Tag">What it belongs to.</param>
/// <param name="Text">The text; a space at its end is drawn but takes no room.</param>
/// <param name="Face">The face.</param>
/// <param name="Size">The size in points.</param>
/// <param name="Color">The tone.</param>
internal sealed record PlacedText(Box Box, Tag? Tag, string Text, BundledFace Face, double Size, SKColor Color)
    : PlacedItem(Box, Tag)
{
    /// <summary>The line the letters stand on.</summary>
    public double Baseline => Box.Y + (Size * TextMeasure.Ascent);

    /// <summary>Text whose letters stand on a baseline.</summary>
    public static PlacedText At(double x, double baseline, Tag? tag, string text, BundledFace face, double size, SKColor color) =>
        new(
            new Box(
                x,
                baseline - (size * TextMeasure.Ascent),
                TextMeasure.Width(text.TrimEnd(' '), face, size),
                size * (TextMeasure.Ascent + TextMeasure.Descent)),
            tag,
            text,
            face,
            size,
            color);
}

/// <summary>A filled rectangle, which a thin line is too.</summary>
/// <param name="Box">The rectangle.</param>
/// <param name="Color">Its tone.</param>
internal sealed record PlacedFill(Box Box, SKColor Color) : PlacedItem(Box, null);

/// <summary>An interval mark.</summary>
/// <param name="Box">The strip it is drawn in; the zero line is at its middle.</param>
/// <param name="Mark">The interval.</param>
internal sealed record PlacedMark(Box Box, IntervalMark Mark) : PlacedItem(Box, null);

/// <summary>A figure.</summary>
/// <param name="Box">The room it has.</param>
/// <param name="Tag">Its node, which holds the alternative text.</param>
/// <param name="Figure">What is drawn.</param>
internal sealed record PlacedFigure(Box Box, Tag Tag, IFigure Figure) : PlacedItem(Box, Tag);
