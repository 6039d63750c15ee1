namespace TrialKit.Results;

/// <summary>What a study found elsewhere, shown beside a trial's own figures and never mixed with them.</summary>
/// <param name="Topic">What it is about, such as <c>late plants</c>.</param>
/// <param name="Study">The study.</param>
/// <param name="Setting">What was compared there.</param>
/// <param name="Found">What was found.</param>
public sealed record PublishedFinding(string Topic, string Study, string Setting, string Found);
