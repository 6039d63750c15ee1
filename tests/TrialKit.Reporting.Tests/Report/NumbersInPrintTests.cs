using System.Text.Json;
using TrialKit.Export;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Words;
using TrialKit.Results;
using UglyToad.PdfPig;

namespace TrialKit.Reporting.Tests.Report;

/// <summary>What the tables of an analysis hold, the printed report says: each comparison's numbers stand together in its row.</summary>
public class NumbersInPrintTests
{
    [Theory]
    [MemberData(nameof(TrialReportTests.Examples), MemberType = typeof(TrialReportTests))]
    public void Render_Pdf_HoldsEveryComparisonOfTheJson(string name)
    {
        var (analysis, document) = TrialReportTests.Report(name);
        using var pdf = PdfDocument.Open(PdfReport.Render(document));
        var text = Squeeze(string.Concat(pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)));

        AssertHolds(analysis, text, name);
    }

    [Theory]
    [MemberData(nameof(TrialReportTests.Examples), MemberType = typeof(TrialReportTests))]
    public void Render_Html_HoldsEveryComparisonOfTheJson(string name)
    {
        var (analysis, document) = TrialReportTests.Report(name);
        var html = System.Text.Encoding.UTF8.GetString(HtmlReport.Render(document));
        var body = html[html.IndexOf("<main", StringComparison.Ordinal)..];
        var text = System.Text.RegularExpressions.Regex.Replace(body, "<[^>]*>", "", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(20));

        AssertHolds(analysis, Squeeze(System.Net.WebUtility.HtmlDecode(text)), name);
    }

    private static void AssertHolds(TrialAnalysis analysis, string text, string name)
    {
        using var stream = new MemoryStream();
        JsonResult.Write(analysis, [], stream);
        using var json = JsonDocument.Parse(stream.ToArray());
        var rows = json.RootElement.GetProperty("tables").GetProperty("comparisons").EnumerateArray().ToArray();

        Assert.True(rows.Length > 10, $"{name}: {rows.Length} comparisons");
        foreach (var row in rows)
        {
            var measure = analysis.Measures.First(each => each.Measure.Id == row.GetProperty("measure").GetString()).Measure;
            if (Number(row, "low") is not { } low || Number(row, "high") is not { } high)
            {
                continue;
            }

            // The cells of a row follow one another: with pairs their number and t, with blocks t and its degrees of freedom, then p.
            var t = NumberText.Number(Number(row, "t")!.Value, 2);
            var printed = MeasureText.Difference(measure, Number(row, "difference")!.Value)
                + MeasureText.Interval(measure, new Interval(low, high, ConfidenceLevel.FromAlpha(Number(row, "alpha")!.Value)))
                + (analysis.Trial.Design.Layout == Trials.Layout.Pairs ? NumberText.Number(Number(row, "replicates")!.Value, 0) + t : t + NumberText.Number(Number(row, "df")!.Value, 0))
                + NumberText.PValue(Number(row, "p")!.Value);
            Assert.True(text.Contains(Squeeze(printed), StringComparison.Ordinal), $"{name}: {measure.Id} of {row.GetProperty("treatment")}: {printed} is not in the report");
        }
    }

    private static double? Number(JsonElement row, string column) =>
        row.TryGetProperty(column, out var value) && value.ValueKind == JsonValueKind.Number ? value.GetDouble() : null;

    private static string Squeeze(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
