using System.Collections.Immutable;
using TrialKit.Ingest;

namespace TrialKit.Season;

/// <summary>What reading a season table gave: its trials, or every problem that stands in their way.</summary>
/// <param name="Sites">The trials, in the table's order; empty when there is an error.</param>
/// <param name="Measures">Ids of all measures of the table, whichever were asked for.</param>
/// <param name="HasStrips">Whether the table of strips lay beside and was read too; without it there is no model of all strips.</param>
/// <param name="Problems">Errors and warnings.</param>
public sealed record SeasonReading(ImmutableArray<PooledSite> Sites, ImmutableArray<string> Measures, bool HasStrips, IReadOnlyList<Problem> Problems)
{
    /// <summary>Whether nothing stands in the way.</summary>
    public bool IsSound => Problems.All(problem => problem.Severity != ProblemSeverity.Error);
}
