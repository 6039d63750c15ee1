using ScottPlot;
using SkiaSharp;

namespace TrialKit.Reporting.Fonts;

/// <summary>Answers every family the plot package asks for with a bundled face.</summary>
internal sealed class PlotFontResolver : IFontResolver
{
    /// <inheritdoc/>
    public SKTypeface CreateTypeface(string fontName, bool bold, bool italic) =>
        BundledFonts.Typeface(BundledFonts.Face(bold, italic));

    /// <inheritdoc/>
    public SKTypeface CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) =>
        CreateTypeface(fontName, weight >= FontWeight.SemiBold, slant != FontSlant.Upright);
}
