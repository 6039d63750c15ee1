using TrialKit.Comparison;
using TrialKit.Ingest;
using TrialKit.Results;

namespace TrialKit.Cli.Batch;

/// <summary>What is kept of a trial of several for the summary.</summary>
internal sealed record BatchLine
{
    /// <summary>The trial.</summary>
    public required NamedTrial Trial { get; init; }

    /// <summary>What became of it.</summary>
    public required BatchStatus Status { get; init; }

    /// <summary>Its title; null when it could not be read.</summary>
    public string? Title { get; init; }

    /// <summary>Comparisons of the measures that the first page speaks of: shown.</summary>
    public int Shown { get; init; }

    /// <summary>Of these: not shown.</summary>
    public int NotShown { get; init; }

    /// <summary>Of these: shown to lie within a margin set beforehand.</summary>
    public int Equivalent { get; init; }

    /// <summary>Of these: not judged.</summary>
    public int NotJudged { get; init; }

    /// <summary>Cautions and serious doubts of the analysis.</summary>
    public int Doubts { get; init; }

    /// <summary>Warnings of the reading.</summary>
    public int Warnings { get; init; }

    /// <summary>Errors of the reading.</summary>
    public int Errors { get; init; }

    /// <summary>The line of a trial that was read.</summary>
    /// <param name="trial">The trial.</param>
    /// <param name="reading">Its reading.</param>
    /// <param name="analysis">Its outcome; null when there is none.</param>
    public static BatchLine Of(NamedTrial trial, TrialReading reading, TrialAnalysis? analysis)
    {
        var verdicts = analysis?.Measures
            .Where(measure => measure.Measure.IsHeadline)
            .SelectMany(measure => measure.Contrasts)
            .CountBy(contrast => contrast.Verdict)
            .ToDictionary() ?? [];
        return new()
        {
            Trial = trial,
            Status = reading.Trial is null ? BatchStatus.DataErrors : analysis is null ? BatchStatus.Plan : BatchStatus.Analysed,
            Title = reading.Trial?.Title,
            Shown = verdicts.GetValueOrDefault(Verdict.Shown),
            NotShown = verdicts.GetValueOrDefault(Verdict.NotShown),
            Equivalent = verdicts.GetValueOrDefault(Verdict.Equivalent),
            NotJudged = verdicts.GetValueOrDefault(Verdict.NotJudged),
            Doubts = analysis?.AllFindings.Count(finding => finding.Weight != FindingWeight.Note) ?? 0,
            Warnings = reading.Warnings.Count(),
            Errors = reading.Errors.Count(),
        };
    }

    /// <summary>The line of a trial on which the program failed.</summary>
    public static BatchLine Failed(NamedTrial trial) => new() { Trial = trial, Status = BatchStatus.Failed };
}
