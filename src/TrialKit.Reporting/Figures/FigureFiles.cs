using System.Globalization;
using System.Security;
using System.Text;
using System.Text.RegularExpressions;
using SkiaSharp;
using TrialKit.Reporting.Fonts;

namespace TrialKit.Reporting.Figures;

/// <summary>A figure as a file of its own.</summary>
public static partial class FigureFiles
{
    /// <summary>The width at which figures are drawn unless another is given, in points: that of a page's text.</summary>
    public const double DefaultWidth = 488;

    /// <summary>The figure as SVG. Its text names the bundled family, and any sans serif after it.</summary>
    /// <param name="figure">What is drawn.</param>
    /// <param name="stream">Where it is written; left open.</param>
    /// <param name="width">Width in points.</param>
    /// <param name="idPrefix">What the identifiers inside begin with; figures on one page need different ones.</param>
    public static void WriteSvg(IFigure figure, Stream stream, double width = DefaultWidth, string idPrefix = "clip")
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentException.ThrowIfNullOrWhiteSpace(idPrefix);
        var area = Area(figure, width);
        using var drawn = new MemoryStream();
        using (var canvas = SKSvgCanvas.Create(area, drawn))
        {
            figure.Draw(canvas, area);
        }

        // The drawing package names each face as a family of its own, and the heavier one by the wrong weight.
        var text = FontFamily().Replace(Encoding.UTF8.GetString(drawn.ToArray()), $"font-family=\"{BundledFonts.Family}, sans-serif\"")
            .Replace("font-weight=\"500\"", "font-weight=\"600\"", StringComparison.Ordinal);
        stream.Write(Encoding.UTF8.GetBytes(Described(Renumber(text, idPrefix), figure, area)));
    }

    /// <summary>The figure as PNG on white.</summary>
    /// <param name="figure">What is drawn.</param>
    /// <param name="stream">Where it is written; left open.</param>
    /// <param name="width">Width in points.</param>
    /// <param name="pixelsPerPoint">Sharpness: 2 suits a screen, 4 suits print.</param>
    public static void WritePng(IFigure figure, Stream stream, double width = DefaultWidth, double pixelsPerPoint = 2)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(stream);
        if (!(pixelsPerPoint > 0 && double.IsFinite(pixelsPerPoint)))
        {
            throw new ArgumentOutOfRangeException(nameof(pixelsPerPoint), pixelsPerPoint, "A picture has more than 0 pixels in a point.");
        }

        var area = Area(figure, width);
        var info = new SKImageInfo((int)Math.Ceiling(area.Width * pixelsPerPoint), (int)Math.Ceiling(area.Height * pixelsPerPoint));
        using var surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale((float)pixelsPerPoint);
        figure.Draw(surface.Canvas, area);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        data.SaveTo(stream);
    }

    // Scaled by its view box, and with the result for those who do not see it.
    private static string Described(string svg, IFigure figure, SKRect area)
    {
        var start = svg.IndexOf("<svg", StringComparison.Ordinal);
        var box = string.Create(CultureInfo.InvariantCulture, $" viewBox=\"0 0 {area.Width:0.###} {area.Height:0.###}\"");
        var label = $" role=\"img\" aria-label=\"{SecurityElement.Escape(PrintableText.Clean(figure.AltText))}\"";
        return svg.Insert(start + "<svg".Length, (svg.Contains("viewBox", StringComparison.Ordinal) ? "" : box) + label);
    }

    // Identifiers are counted over the life of the process; here they begin anew in each file.
    private static string Renumber(string svg, string prefix)
    {
        var numbers = new Dictionary<string, string>(StringComparer.Ordinal);
        return ClipId().Replace(svg, match =>
        {
            if (!numbers.TryGetValue(match.Value, out var id))
            {
                id = string.Create(CultureInfo.InvariantCulture, $"{prefix}-{numbers.Count + 1}");
                numbers.Add(match.Value, id);
            }

            return id;
        });
    }

    [GeneratedRegex("(?<=[\"#])cl_[0-9a-f]+(?=[\")])", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex ClipId();

    [GeneratedRegex("font-family=\"[^\"]*\"", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex FontFamily();

    private static SKRect Area(IFigure figure, double width) => width > 0 && double.IsFinite(width)
        ? SKRect.Create((float)width, (float)figure.HeightAt(width))
        : throw new ArgumentOutOfRangeException(nameof(width), width, "A figure is wider than 0 points.");
}
