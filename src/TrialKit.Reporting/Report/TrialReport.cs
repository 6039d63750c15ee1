using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Report;

/// <summary>The report of one trial: which blocks it has, in which order.</summary>
public static class TrialReport
{
    /// <summary>The report as plain data.</summary>
    /// <param name="analysis">The outcome of the trial.</param>
    /// <param name="settings">Sheet, inputs and warnings.</param>
    public static ReportDocument Of(TrialAnalysis analysis, ReportSettings settings)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(settings);
        var tones = TreatmentTones.Of(analysis.Trial);
        Block[] blocks =
        [
            AnswerPage.Of(analysis, tones),
            .. DesignPart.Of(analysis, tones),
            .. HeatPart.Of(analysis),
            .. EmergencePart.Of(analysis, tones),
            .. DifferencePart.Of(analysis, tones),
            .. AnswersPart.Of(analysis),
            .. ComparisonPart.Of(analysis),
            .. FurtherTestsPart.Of(analysis),
            .. SpotPart.Of(analysis),
            .. CountPart.Of(analysis),
            .. ResidualPart.Of(analysis, tones),
            .. SpacingPart.Of(analysis, tones),
            .. StripPart.Of(analysis),
            .. EmergenceReviewPart.Of(analysis),
            .. EvennessPart.Of(analysis),
            .. PlacementPart.Of(analysis),
            .. StandResponsePart.Of(analysis),
            .. StarterPart.Of(analysis),
            .. MoneyPart.Of(analysis, tones),
            .. DoubtPart.Of(analysis),
            .. MethodPart.Of(analysis, settings),
        ];
        return new(
            analysis.Trial.Title,
            analysis.Trial.Question ?? analysis.Trial.Title,
            "en-US",
            settings.PageSize,
            new ReportFooter($"TrialKit {Library.Version}", Fingerprint.Of(settings.Inputs)),
            blocks);
    }

    /// <summary>The figures of a report that are written as files of their own, each once; their names are names of files on any system, and no two are the same.</summary>
    /// <param name="document">The report.</param>
    public static IEnumerable<FigureBlock> Figures(ReportDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        return [.. document.Fullest.OfType<FigureBlock>()
            .Where(figure => figure.Name is not null)
            .DistinctBy(figure => (figure.Name, figure.Figure))
            .Select(figure => figure with { Name = FileNameText.Unused(figure.Name!, taken) })];
    }
}
