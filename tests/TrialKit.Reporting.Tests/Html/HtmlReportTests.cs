using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Tests.Report;

namespace TrialKit.Reporting.Tests.Html;

public partial class HtmlReportTests
{
    private const string Attack = "<script>alert(1)</script>";

    [Theory]
    [MemberData(nameof(Gallery.Cases), MemberType = typeof(Gallery))]
    public void Render_Twice_GivesTheSameBytes(string name, PageSize size) =>
        Assert.Equal(HtmlReport.Render(Gallery.Named(name, size)), HtmlReport.Render(Gallery.Named(name, size)));

    [Fact]
    public void Render_UnderAnotherCulture_GivesTheSameBytes()
    {
        var expected = HtmlReport.Render(Gallery.Named("report"));
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal(expected, HtmlReport.Render(Gallery.Named("report")));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    [Theory]
    [MemberData(nameof(Gallery.Cases), MemberType = typeof(Gallery))]
    public void Render_AnyDocument_NeedsNothingElse(string name, PageSize size)
    {
        var html = Html(Gallery.Named(name, size));

        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("style=\"", html, StringComparison.Ordinal);
        Assert.All(Reference().Matches(html).Select(match => match.Groups["to"].Value), to => Assert.Matches("^(data:|#)", to));
        Assert.Equal(1, Regex.Count(html, "<main", RegexOptions.None, TimeSpan.FromSeconds(5)));
        Assert.Equal(html.Split("<section").Length, html.Split("</section>").Length);
    }

    [Fact]
    public void Render_Report_AllowsItsOwnStyleSheetAlone()
    {
        var html = Html(Gallery.Named("report"));
        var start = html.IndexOf("<style>", StringComparison.Ordinal) + "<style>".Length;
        var style = html[start..html.IndexOf("</style>", StringComparison.Ordinal)];

        Assert.Contains("default-src 'none'", html, StringComparison.Ordinal);
        Assert.Contains($"style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Render_NameThatIsAScript_StaysText()
    {
        var html = Html(AwkwardTrials.Labelled(Attack + "\" onload='alert(2)'"));

        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt;", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("\" onload", html, StringComparison.Ordinal);
        Assert.DoesNotContain("onload='", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Render_Report_NamesLandmarksHeadsCellsAndFigures()
    {
        var html = Html(TrialReportTests.Report("drag-chains").Document);

        Assert.Contains("<html lang=\"en-US\">", html, StringComparison.Ordinal);
        Assert.All(["<header>", "<main id=\"report\">", "<nav aria-label=\"Contents\">", "<footer>", "<caption>", "<th scope=\"col\"", "<th scope=\"row\"", "@media print"], part => Assert.Contains(part, html, StringComparison.Ordinal));
        Assert.Equal(1, html.Split("<h1 ").Length - 1);
        var figures = html.Split("<figure>").Skip(1).ToArray();
        Assert.NotEmpty(figures);
        Assert.All(figures, figure => Assert.Matches("role=\"img\" aria-label=\"[^\"]{40,}\"", figure));
        var ids = Id().Matches(html).Select(match => match.Value).ToArray();
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Style_TextTones_StandOutFromWhite() =>
        Assert.All(
            [FigureStyle.Ink, FigureStyle.Quiet, FigureStyle.ControlText, FigureStyle.Treatments[0]],
            tone => Assert.True(1.05 / (Luminance(tone) + 0.05) >= 4.5, tone.ToString()));

    // Relative luminance after the Web Content Accessibility Guidelines 2.2.
    private static double Luminance(SkiaSharp.SKColor color)
    {
        double[] parts = [.. new[] { color.Red, color.Green, color.Blue }.Select(part => part / 255.0).Select(part => part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4))];
        return (0.2126 * parts[0]) + (0.7152 * parts[1]) + (0.0722 * parts[2]);
    }

    private static string Html(ReportDocument document) => Encoding.UTF8.GetString(HtmlReport.Render(document));

    [GeneratedRegex("(?:href|src)=\"(?<to>[^\"]*)\"|url\\((?<to>[^)]*)\\)", RegexOptions.ExplicitCapture, 20000)]
    private static partial Regex Reference();

    [GeneratedRegex("(?<= id=\")[^\"]*", RegexOptions.None, 20000)]
    private static partial Regex Id();
}
