namespace TrialKit.Reporting.Figures;

/// <summary>One strip of a design map.</summary>
/// <param name="Name">The strip's name.</param>
/// <param name="Block">The pair or block it stands in.</param>
/// <param name="Treatment">Its treatment's place in the key, from 0.</param>
/// <param name="IsAnalysed">Whether it takes part in the analysis.</param>
public sealed record MapCell(string Name, string Block, int Treatment, bool IsAnalysed);
