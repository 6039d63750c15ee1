namespace TrialKit.Season;

/// <summary>A column of a season table as others see it.</summary>
/// <param name="Name">Its stable name.</param>
/// <param name="Type">What its cells are.</param>
/// <param name="IsRequired">Whether every row has a value.</param>
/// <param name="Unit">Its unit; empty where it has none, <c>unit</c> where the column of that name says it.</param>
/// <param name="Meaning">What it holds.</param>
internal sealed record SeasonField(string Name, SeasonType Type, bool IsRequired, string Unit, string Meaning);
