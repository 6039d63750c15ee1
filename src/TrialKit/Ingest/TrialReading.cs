using TrialKit.Trials;

namespace TrialKit.Ingest;

/// <summary>What reading a trial folder gave: the trial, or every problem that stands in its way.</summary>
/// <param name="Folder">The folder as it was named.</param>
/// <param name="Trial">The trial; null when there is an error.</param>
/// <param name="Problems">Errors and warnings in the order of the files and of the places within each.</param>
/// <param name="Tables">What became of the rows of each table that the trial has.</param>
public sealed record TrialReading(string Folder, StripTrial? Trial, IReadOnlyList<Problem> Problems, IReadOnlyList<TableRows> Tables)
{
    /// <summary>The problems that stop the trial.</summary>
    public IEnumerable<Problem> Errors => Problems.Where(problem => problem.Severity == ProblemSeverity.Error);

    /// <summary>The problems that a reader of the results should know.</summary>
    public IEnumerable<Problem> Warnings => Problems.Where(problem => problem.Severity == ProblemSeverity.Warning);
}
