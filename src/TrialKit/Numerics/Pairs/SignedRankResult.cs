namespace TrialKit.Numerics.Pairs;

/// <summary>What a signed-rank test found.</summary>
/// <param name="V">Sum of the ranks of the positive differences.</param>
/// <param name="Used">Pairs that carry a signed rank.</param>
/// <param name="Zeros">Pairs that did not differ.</param>
/// <param name="P">Two-sided p: twice the smaller tail, at most 1.</param>
/// <param name="PGreater">Chance of a V this large or larger.</param>
/// <param name="PLess">Chance of a V this small or smaller.</param>
internal readonly record struct SignedRankResult(double V, int Used, int Zeros, double P, double PGreater, double PLess);
