using UnitsNet;

namespace TrialKit.Trials;

/// <summary>One strip: the experimental unit, planted with one treatment.</summary>
/// <param name="Name">The name that tables use.</param>
/// <param name="Block">The block (or pair) it stands in.</param>
/// <param name="Treatment">What was done to it.</param>
/// <param name="Order">Its place across the field from 1; null when not recorded.</param>
/// <param name="Length">Length of the strip; null when not recorded.</param>
/// <param name="Width">Width of the strip; null when not recorded.</param>
/// <param name="Rows">Rows in the strip; null when not recorded.</param>
/// <param name="Planted">The day it was planted.</param>
/// <param name="LeftOut">Why it is left out of the analysis; null when it is in.</param>
/// <param name="Note">Whatever was noted.</param>
public sealed record Strip(
    string Name,
    string Block,
    Treatment Treatment,
    int? Order,
    Length? Length,
    Length? Width,
    int? Rows,
    DateOnly Planted,
    string? LeftOut,
    string? Note)
{
    /// <summary>Whether the strip takes part in the analysis.</summary>
    public bool IsAnalysed => LeftOut is null;

    /// <summary>Days from the midnight that begins the planting day to a moment; a date alone counts from its own first midnight.</summary>
    public double DaysAfterPlanting(DateTime moment) => (moment - Planted.ToDateTime(TimeOnly.MinValue)).TotalDays;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
