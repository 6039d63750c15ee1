namespace TrialKit.Reporting.Figures;

/// <summary>A plant on a row map.</summary>
/// <param name="Position">Its place along the tape, 0 or more.</param>
/// <param name="Step">The step of its tone, from 0; null where its emergence was not dated.</param>
public sealed record MappedPlant(double Position, int? Step);
