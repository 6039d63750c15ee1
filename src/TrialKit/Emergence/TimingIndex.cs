using TrialKit.Results;

namespace TrialKit.Emergence;

/// <summary>An index of emergence timing under its author's name.</summary>
/// <param name="Id">A stable name for files, such as <c>speed-maguire</c>.</param>
/// <param name="Value">The index; null where its counts leave it undefined.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Method">Its name and source.</param>
/// <param name="Remark">Why there is no value, such as <c>not reached</c>; null where there is one or nothing is to be said.</param>
public sealed record TimingIndex(string Id, double? Value, Unit Unit, Method Method, string? Remark = null);
