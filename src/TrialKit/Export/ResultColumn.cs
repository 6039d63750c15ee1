namespace TrialKit.Export;

/// <summary>A column of a result table.</summary>
/// <param name="Name">Its stable name: lower case, words joined by underscores, the unit last where it is fixed.</param>
/// <param name="Description">What it holds.</param>
public sealed record ResultColumn(string Name, string Description);
