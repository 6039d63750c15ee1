namespace TrialKit.Fuzz;

/// <summary>What became of a case.</summary>
/// <param name="Broken">The promise that was broken; null when all were kept.</param>
/// <param name="IsRead">Whether the damaged trial read without an error.</param>
/// <param name="IsAnalysed">Whether it was analysed too.</param>
internal sealed record Outcome(string? Broken, bool IsRead, bool IsAnalysed);
