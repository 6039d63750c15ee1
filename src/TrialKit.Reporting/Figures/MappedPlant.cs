namespace TrialKit.Reporting.Figures;

/// <summary>A plant on a row map.</summary>
/// <param name="Position">Its place along the tape, 0 or more.</param>
/// <param name="Step">The step of its tone, from 0; null where its emergence was not dated.</param>
/// <param name="IsLate">Whether it is marked as late.</param>
public sealed record MappedPlant(double Position, int? Step, bool IsLate = false);
