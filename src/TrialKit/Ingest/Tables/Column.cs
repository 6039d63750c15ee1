using TrialKit.Ingest.Cells;

namespace TrialKit.Ingest.Tables;

/// <summary>A column that a table may have.</summary>
/// <param name="Name">The name of the contract, in lower case with underscores.</param>
/// <param name="Kind">The physical quantity it holds; null when it has no unit.</param>
/// <param name="Required">Whether the table is incomplete without it.</param>
internal sealed record Column(string Name, UnitKind? Kind = null, bool Required = false)
{
    /// <summary>Other names under which it is known.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>Whether it is one of the columns a user is told of; others are known to stand in files of weather stations.</summary>
    public bool IsListed { get; init; } = true;
}
