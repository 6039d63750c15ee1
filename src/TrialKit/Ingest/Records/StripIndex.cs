using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;

namespace TrialKit.Ingest.Records;

/// <summary>The strips by name, as the other tables refer to them.</summary>
/// <param name="problems">Takes references to strips that do not exist.</param>
internal sealed class StripIndex(ProblemList problems)
{
    private readonly Dictionary<string, Strip> _strips = new(Identifier.Comparer);

    /// <summary>Makes a strip known; the first of a name stays.</summary>
    public void Add(Strip strip) => _strips.TryAdd(strip.Name, strip);

    /// <summary>The strip that a row names; null with an error added when it names none or one that is not known.</summary>
    public Strip? Find(CellReader cells, int row, BoundColumn column)
    {
        if (!cells.Require(row, column) || cells.Name(row, column) is not { } name)
        {
            return null;
        }

        if (_strips.TryGetValue(name, out var strip))
        {
            return strip;
        }

        problems.Add(TrialProblems.UnknownStrip(cells.At(row, column), name, [.. _strips.Keys]));
        return null;
    }
}
