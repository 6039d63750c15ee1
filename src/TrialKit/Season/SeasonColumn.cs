namespace TrialKit.Season;

/// <summary>A column of a season table with the way to its cells.</summary>
/// <param name="Field">The column.</param>
/// <param name="Cell">A row's cell: text, whole number, finite number, true or false, or date as the field says; null where there is none.</param>
internal sealed record SeasonColumn<TRow>(SeasonField Field, Func<TRow, object?> Cell)
{
    /// <summary>A column that every row has a value in.</summary>
    public static SeasonColumn<TRow> Required(string name, SeasonType type, string meaning, Func<TRow, object?> cell, string unit = "") =>
        new(new(name, type, IsRequired: true, unit, meaning), cell);

    /// <summary>A column that may be empty.</summary>
    public static SeasonColumn<TRow> Optional(string name, SeasonType type, string meaning, Func<TRow, object?> cell, string unit = "") =>
        new(new(name, type, IsRequired: false, unit, meaning), cell);
}
