using System.Collections.Concurrent;
using TrialKit.Fuzz.Mutation;

namespace TrialKit.Fuzz;

/// <summary>What came of a run.</summary>
internal sealed class FuzzTally
{
    private readonly ConcurrentDictionary<(string Subject, MutationKind Kind), (int Cases, int Read, int Analysed)> _counts = new();
    private readonly ConcurrentBag<(long Case, string Broken)> _broken = [];

    /// <summary>Cases by subject and kind: how many, how many read, how many were analysed.</summary>
    public IEnumerable<KeyValuePair<(string Subject, MutationKind Kind), (int Cases, int Read, int Analysed)>> Counts => _counts;

    /// <summary>The cases that broke a promise, in order.</summary>
    public IEnumerable<(long Case, string Broken)> Broken => _broken.OrderBy(entry => entry.Case);

    /// <summary>The case that took longest.</summary>
    public (long Case, TimeSpan Took) Slowest { get; private set; }

    /// <summary>Adds a case.</summary>
    public void Add(FuzzCase tried, Outcome outcome, TimeSpan took)
    {
        _counts.AddOrUpdate(
            (tried.Subject.Name, tried.Kind),
            _ => (1, outcome.IsRead ? 1 : 0, outcome.IsAnalysed ? 1 : 0),
            (_, before) => (before.Cases + 1, before.Read + (outcome.IsRead ? 1 : 0), before.Analysed + (outcome.IsAnalysed ? 1 : 0)));
        if (outcome.Broken is { } broken)
        {
            _broken.Add((tried.Number, $"{tried.Subject.Name}, {tried.Kind}: {broken}"));
        }

        lock (_broken)
        {
            if (took > Slowest.Took)
            {
                Slowest = (tried.Number, took);
            }
        }
    }
}
