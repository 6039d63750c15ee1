using TrialKit.Export;
using TrialKit.Reporting.Document;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>How the figures were made, from which files, so that they can be made again.</summary>
internal static class MethodPart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis, ReportSettings settings) => Of(analysis.Methods, settings, [.. Settings(analysis)]);

    /// <summary>The methods and files of whatever was computed, and its settings where they are given.</summary>
    public static IEnumerable<Block> Of(IEnumerable<Method> methods, ReportSettings settings, IReadOnlyList<KeyFact>? values = null)
    {
        yield return new Heading(2, "Methods");
        yield return new Paragraph("The strip is the unit of comparison. Spots within a strip are averaged first: more spots make a strip's figure better known and never stand in for another strip.");
        yield return new BulletList([.. methods.Select(method => RichText.Of(method.Name, Emphasis.Strong).Then($". {method.Source}."))]);
        yield return new Heading(2, values is null ? "Data" : "Settings and data");
        if (values is not null)
        {
            yield return new Table("Settings", [new("Setting"), new("Value")], [.. values.Select(fact => TableRow.Of(fact.Name, fact.Value))]);
        }

        yield return new Table(
            "Files read",
            [new("File"), new("Rows", Alignment: ColumnAlignment.Right), new("SHA-256")],
            [.. settings.Inputs.Select(input => TableRow.Of(input.Name, input.Rows is { } rows ? NumberText.Count(rows) : NumberText.Dash, input.Sha256))],
            $"Read and analysed by TrialKit {Library.Version}. A figure in brackets, a t or a p can be recomputed from the written tables of the analyze command.");
        if (settings.Warnings.Count > 0)
        {
            yield return new Heading(3, "Warnings of the reading");
            yield return new BulletList([.. settings.Warnings.Select(warning => RichText.Of(warning))]);
        }
    }

    private static IEnumerable<KeyFact> Settings(TrialAnalysis analysis)
    {
        var design = analysis.Trial.Design;
        yield return new("Program", $"TrialKit {Library.Version}");
        yield return new("Tables written", $"schema {NumberText.Count(ResultTables.SchemaVersion)}");
        yield return new("Layout", design.Layout == Layout.Pairs ? "pairs" : "blocks");
        yield return new("Control", design.Control?.Label ?? "none named");
        yield return new("Level of tests and intervals", $"{NumberText.Number(design.Level.Alpha, 3)}, intervals {design.Level}");
        yield return new("Units printed", analysis.Trial.Units == Quantities.UnitSystem.Us ? "US" : "metric");
        if (analysis.Heat is { } heat)
        {
            yield return new("Heat", $"{heat.Clock.HeatMethod.Name}, planting day {(heat.Clock.CountsPlantingDay ? "" : "not ")}counted, from {heat.Source}");
        }
    }
}
