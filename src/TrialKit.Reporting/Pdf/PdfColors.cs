using PdfSharp.Drawing;
using SkiaSharp;

namespace TrialKit.Reporting.Pdf;

/// <summary>The style's tones as the PDF package takes them.</summary>
internal static class PdfColors
{
    /// <summary>A tone.</summary>
    public static XColor Of(SKColor color) => XColor.FromArgb(color.Red, color.Green, color.Blue);
}
