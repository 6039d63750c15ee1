using TrialKit.Quantities;

namespace TrialKit.Emergence;

/// <summary>A test of two treatments on the seeds' times, whose unit is the strip: labels are exchanged within blocks.</summary>
/// <param name="Of">What is scored: <c>seeds sown</c> (share and time together) or <c>plants up</c> (time alone).</param>
/// <param name="Blocks">Blocks that hold both treatments.</param>
/// <param name="Statistic">Sum of the treated strips' mean scores less their block means; above zero when the treatment is sooner.</param>
/// <param name="P">Two-sided: exact where the arrangements can be listed, else normal; null when no exchange changes the statistic.</param>
/// <param name="IsExact">Whether every arrangement was counted.</param>
/// <param name="SmallestP">The smallest p these strips can give.</param>
public sealed record TimeScoreTest(string Of, int Blocks, double Statistic, Probability? P, bool IsExact, Probability SmallestP);
