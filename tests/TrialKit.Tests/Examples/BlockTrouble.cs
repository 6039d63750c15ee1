namespace TrialKit.Tests.Examples;

/// <summary>Something that went wrong with one strip.</summary>
/// <param name="Block">Its block, from 1.</param>
/// <param name="Treatment">Its treatment.</param>
/// <param name="LeftOut">Why it is left out; null when the strip was never planted and is not listed.</param>
/// <param name="ShareKept">Share of its plants that the mishap left.</param>
internal sealed record BlockTrouble(int Block, string Treatment, string? LeftOut, double ShareKept);
