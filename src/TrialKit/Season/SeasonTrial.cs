using TrialKit.Ingest;

namespace TrialKit.Season;

/// <summary>An analysed trial on its way into a season table.</summary>
/// <param name="Id">What the trial is called in the table; unlike any other's there.</param>
/// <param name="Analysis">Its outcome.</param>
/// <param name="Fingerprint">The mark of the files it was read from, by <see cref="InputFile.Fingerprint"/>.</param>
public sealed record SeasonTrial(string Id, TrialAnalysis Analysis, string Fingerprint)
{
    /// <summary>What tells it from others.</summary>
    internal TrialIdentity Identity { get; } = TrialIdentity.Of(Analysis.Trial);
}
