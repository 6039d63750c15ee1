namespace TrialKit.Numerics.Pairs;

/// <summary>What a sign test found.</summary>
/// <param name="Plus">Pairs above zero.</param>
/// <param name="Minus">Pairs below zero.</param>
/// <param name="Zeros">Pairs that did not differ; they are left out.</param>
/// <param name="P">Two-sided p: twice the smaller tail, at most 1.</param>
/// <param name="PGreater">Chance of this many plus signs or more.</param>
/// <param name="PLess">Chance of this many plus signs or fewer.</param>
internal readonly record struct SignTestResult(int Plus, int Minus, int Zeros, double P, double PGreater, double PLess);
