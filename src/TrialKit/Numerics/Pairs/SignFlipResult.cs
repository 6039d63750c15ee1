namespace TrialKit.Numerics.Pairs;

/// <summary>What a randomisation test by sign flips found.</summary>
/// <param name="P">Two-sided p.</param>
/// <param name="HitCount">Flips whose sum lies at least as far from zero as the one observed.</param>
/// <param name="Total">Flips looked at: 2^n when exact, the draws otherwise.</param>
/// <param name="IsExact">Whether every flip was looked at.</param>
/// <param name="Draws">Random draws made; nothing when exact.</param>
/// <param name="Seed">Seed of the draws; nothing when exact.</param>
internal readonly record struct SignFlipResult(double P, long HitCount, double Total, bool IsExact, int? Draws, ulong? Seed);
