using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;

namespace TrialKit.Ingest.Records;

/// <summary>The strips by name, as the other tables refer to them.</summary>
/// <param name="problems">Takes references to strips that do not exist.</param>
internal sealed class StripIndex(ProblemList problems)
{
    private readonly Dictionary<string, Strip> _strips = new(Identifier.Comparer);
    private readonly Dictionary<string, string?> _nearest = new(StringComparer.Ordinal);
    private readonly HashSet<(string File, string? Sheet, string Name)> _said = [];
    private string? _lastName;
    private Strip? _lastStrip;

    /// <summary>Whether the strips are known at all. When their table cannot be read, that is the error, and not every mention of a strip.</summary>
    public bool IsKnown { get; set; } = true;

    /// <summary>Makes a strip known; the first of a name stays.</summary>
    public void Add(Strip strip) => _strips.TryAdd(strip.Name, strip);

    /// <summary>The strip that a row names; null with an error added when it names none or one that is not known, and null without one when no strip is known.</summary>
    public Strip? Find(CellReader cells, int row, BoundColumn column)
    {
        if (!cells.Require(row, column) || cells.Name(row, column) is not { } name)
        {
            return null;
        }

        // Rows of one strip follow each other, and the reader hands out one string for one name.
        if (ReferenceEquals(name, _lastName))
        {
            return _lastStrip;
        }

        if (_strips.TryGetValue(name, out var strip) || !IsKnown)
        {
            (_lastName, _lastStrip) = (name, strip);
            return strip;
        }

        // One fault, though every row of the strip feels it.
        var at = cells.At(row, column);
        if (_said.Add((at.File, at.Sheet, name)))
        {
            problems.Add(TrialProblems.UnknownStrip(at, name, Nearest(name)));
        }

        return null;
    }

    private string? Nearest(string name)
    {
        // A strip that is missing is named by thousands of rows.
        if (!_nearest.TryGetValue(name, out var nearest))
        {
            nearest = _strips.Count == 0 ? null : NearestName.Of(name, _strips.Keys);
            _nearest.Add(name, nearest);
        }

        return nearest;
    }
}
