namespace TrialKit.Ingest;

/// <summary>One fault of the input: where it stands, what was found and what was expected.</summary>
/// <param name="Code">The stable code, such as <c>TK103</c>; docs/guide/problems.md explains each.</param>
/// <param name="Severity">Whether it stops the run.</param>
/// <param name="Location">Where it stands.</param>
/// <param name="Found">What the file holds, as a sentence without a full stop.</param>
/// <param name="Expected">What would be right, as a sentence without a full stop.</param>
public sealed record Problem(string Code, ProblemSeverity Severity, ProblemLocation Location, string Found, string Expected)
{
    /// <summary>The problem as one line: <c>FILE:LINE:COLUMN: error CODE: what was found; what was expected</c>.</summary>
    public override string ToString() =>
        $"{Location}: {(Severity == ProblemSeverity.Error ? "error" : "warning")} {Code}: {Found}; {Expected}";
}
