namespace TrialKit.Numerics.Pairs;

/// <summary>What a signed-rank test does with pairs that did not differ.</summary>
internal enum ZeroTreatment
{
    /// <summary>Leave them out before ranking (Wilcoxon 1945).</summary>
    Drop,

    /// <summary>Rank them with the others, then leave their ranks out (Pratt 1959).</summary>
    Pratt,
}
