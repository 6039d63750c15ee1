namespace TrialKit.Reporting.Document;

/// <summary>A row of a table.</summary>
/// <param name="Cells">One text for each column.</param>
/// <param name="Strong">Whether the row stands out, as a row of means or differences does.</param>
public sealed record TableRow(IReadOnlyList<string> Cells, bool Strong = false)
{
    /// <summary>A row of these cells.</summary>
    public static TableRow Of(params IReadOnlyList<string> cells) => new(cells);
}
