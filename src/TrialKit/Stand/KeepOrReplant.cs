using TrialKit.Quantities;

namespace TrialKit.Stand;

/// <summary>A stand that is left against one replanted later, both by the published table.</summary>
/// <param name="Stand">Plants left.</param>
/// <param name="Planted">When they were planted.</param>
/// <param name="ReplantStand">The stand expected of the replanted field.</param>
/// <param name="Replanted">When it would be replanted.</param>
public sealed record KeepOrReplant(PlantDensity Stand, DateOnly Planted, PlantDensity ReplantStand, DateOnly Replanted)
{
    /// <summary>Percent of the best with the stand kept; null outside the table.</summary>
    public double? Kept => StandResponse.PercentAt(Planted, Stand);

    /// <summary>Percent of the best after replanting; null outside the table.</summary>
    public double? After => StandResponse.PercentAt(Replanted, ReplantStand);

    /// <summary>Points gained by replanting, before its cost; null outside the table.</summary>
    public double? Gain => After - Kept;

    /// <summary>When it would be replanted, after the planting and in its season.</summary>
    public DateOnly Replanted { get; } = IsReplantOf(Replanted, Planted)
        ? Replanted
        : throw new ArgumentOutOfRangeException(nameof(Replanted), Replanted, FormattableString.Invariant($"The replant date {Replanted:yyyy-MM-dd} is not after the planting date {Planted:yyyy-MM-dd} in the same year."));

    /// <summary>Whether a date can be the replanting of a stand: after its planting, in the same year.</summary>
    /// <param name="replanted">The date.</param>
    /// <param name="planted">When the stand was planted.</param>
    public static bool IsReplantOf(DateOnly replanted, DateOnly planted) => replanted > planted && replanted.Year == planted.Year;
}
