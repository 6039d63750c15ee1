using TrialKit.Reporting.Document;
using TrialKit.Results;

namespace TrialKit.Reporting.Report;

/// <summary>How the figures were made, from which files, so that they can be made again.</summary>
internal static class MethodPart
{
    private const int PrintedDigits = 16;

    public static IEnumerable<Block> Of(TrialAnalysis analysis, ReportSettings settings) => Of(analysis.Methods, settings);

    /// <summary>The methods and files of whatever was computed.</summary>
    public static IEnumerable<Block> Of(IEnumerable<Method> methods, ReportSettings settings)
    {
        yield return new Heading(2, "Methods");
        yield return new Paragraph("The strip is the unit of comparison. Spots within a strip are averaged first: more spots make a strip's figure better known and never stand in for another strip.");
        yield return new BulletList([.. methods.Select(method => RichText.Of(method.Name, Emphasis.Strong).Then($". {method.Source}."))]);
        yield return new Heading(2, "Data");
        yield return new Table(
            "Files read",
            [new("File"), new("Rows", Alignment: ColumnAlignment.Right), new("SHA-256, first 16 digits")],
            [.. settings.Inputs.Select(input => TableRow.Of(input.Name, input.Rows is { } rows ? NumberText.Count(rows) : NumberText.Dash, input.Sha256[..PrintedDigits]))],
            $"Read and analysed by TrialKit {Library.Version}. A figure in brackets, a t or a p can be recomputed from the written tables of the analyze command.");
        if (settings.Warnings.Count > 0)
        {
            yield return new Heading(3, "Warnings of the reading");
            yield return new BulletList([.. settings.Warnings.Select(warning => RichText.Of(warning))]);
        }
    }
}
