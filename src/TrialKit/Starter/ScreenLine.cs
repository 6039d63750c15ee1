using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>What is put at one placement, held against one source's limit.</summary>
/// <param name="Placement">Where.</param>
/// <param name="Source">Whose limit.</param>
/// <param name="Limit">The limit; null when none was chosen.</param>
/// <param name="PoundsPerAcre">The amount in what the limit sums; null when there is no limit or it is not known.</param>
/// <param name="Verdict">How it stands.</param>
/// <param name="Reason">Why this limit, or why none.</param>
public sealed record ScreenLine(Placement Placement, LimitSource Source, ScreeningLimit? Limit, double? PoundsPerAcre, ScreenVerdict Verdict, string Reason)
{
    /// <summary>The amount at the precision of the limit, which is what was compared; null when nothing was.</summary>
    public double? Compared => Limit is { } limit && PoundsPerAcre is { } amount ? limit.AsPrinted(amount) : null;
}
