using Microsoft.Playwright;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Tests.Report;

namespace TrialKit.Reporting.Tests.Html;

/// <summary>The HTML report in a real browser without a network, at the widths of a telephone, a tablet and a desk.</summary>
public class HtmlInBrowserTests
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    [Theory]
    [InlineData("drag-chains", 360)]
    [InlineData("drag-chains", 768)]
    [InlineData("drag-chains", 1280)]
    [InlineData("closing-wheels", 360)]
    [InlineData("closing-wheels", 1280)]
    [InlineData("starter-placement", 360)]
    public Task Render_Example_FitsTheScreenAndSaysNothingToTheConsole(string example, int width) =>
        OpensWell(TrialReportTests.Report(example).Document, width);

    [Theory]
    [InlineData(360)]
    [InlineData(1280)]
    public async Task Render_TreatmentNamedAsAScript_RunsNothing(int width)
    {
        await OpensWell(AwkwardTrials.Labelled("<script>alert(1)</script>"), width);
    }

    [Fact]
    public Task Render_LongWords_FitATelephone() => OpensWell(AwkwardTrials.Named("names of one long word").Document, 360);

    private static async Task OpensWell(ReportDocument document, int width)
    {
        if (Array.Find(Places, File.Exists) is not { } browserPath)
        {
            Assert.Skip($"No browser was found at {string.Join(", ", Places)}; the HTML report is tested only in a real one.");
            return;
        }

        var path = Path.Combine(Path.GetTempPath(), $"trialkit-{Guid.NewGuid():N}.html");
        await File.WriteAllBytesAsync(path, HtmlReport.Render(document), TestContext.Current.CancellationToken);
        try
        {
            using var playwright = await Playwright.CreateAsync();
            await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = browserPath, Args = ["--no-sandbox"] });
            var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = width, Height = 800 }, Offline = true });
            var said = new List<string>();
            page.Console += (_, message) => said.Add(message.Text);
            page.PageError += (_, error) => said.Add(error);
            page.Dialog += (_, dialog) => said.Add($"dialog: {dialog.Message}");
            await page.GotoAsync(new Uri(path).AbsoluteUri);

            Assert.Empty(said);
            Assert.Equal(width, await page.EvaluateAsync<int>("document.documentElement.clientWidth"));
            Assert.InRange(await page.EvaluateAsync<int>("document.documentElement.scrollWidth"), 1, width);
            Assert.True(await page.EvaluateAsync<bool>("[...document.fonts].every(font => font.status !== 'error')"), "a font could not be read");
            Assert.True(await page.EvaluateAsync<bool>("document.fonts.check('16px \"IBM Plex Sans\"')"), "the report's own font is not used");
            var drawn = await page.EvaluateAsync<int>("[...document.querySelectorAll('figure .draw')].filter(each => each.getClientRects().length > 0).length");
            Assert.Equal(await page.EvaluateAsync<int>("document.querySelectorAll('figure').length"), drawn);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
