namespace TrialKit.Reporting.Figures;

/// <summary>A row of a row map: the plants of one spot.</summary>
/// <param name="Name">What is printed before it.</param>
/// <param name="Plants">Its plants, one or more.</param>
public sealed record MappedRow(string Name, IReadOnlyList<MappedPlant> Plants);
