namespace TrialKit.Ingest;

/// <summary>The problems of one reading, gathered in any order and handed out in the order of the files and of the places within them.</summary>
internal sealed class ProblemList
{
    private readonly List<(int Rank, Problem Problem)> _problems = [];

    /// <summary>The place in the order of files that problems added from now on take.</summary>
    public int Rank { get; set; }

    /// <summary>How many errors were added.</summary>
    public int Errors { get; private set; }

    public void Add(Problem problem)
    {
        _problems.Add((Rank, problem));
        if (problem.Severity == ProblemSeverity.Error)
        {
            Errors++;
        }
    }

    /// <summary>Takes back the warnings of a code.</summary>
    public void Withdraw(string code) => _problems.RemoveAll(entry => entry.Problem.Severity == ProblemSeverity.Warning && entry.Problem.Code == code);

    /// <summary>Puts the warnings of a code together, group by group, where a group has more of them than are worth listing.</summary>
    /// <param name="code">The code.</param>
    /// <param name="group">What belongs together.</param>
    /// <param name="mostListed">The most of a group that are left one by one.</param>
    /// <param name="together">One problem for the first of a group and those after it, in the order of the file.</param>
    public void Fold(string code, Func<Problem, string> group, int mostListed, Func<Problem, IReadOnlyList<Problem>, Problem> together)
    {
        var groups = _problems
            .Where(entry => entry.Problem.Severity == ProblemSeverity.Warning && entry.Problem.Code == code)
            .GroupBy(entry => group(entry.Problem), StringComparer.Ordinal)
            .Where(entries => entries.Count() > mostListed)
            .Select(entries => entries.OrderBy(entry => entry.Rank).ThenBy(entry => entry.Problem.Location.Line).ThenBy(entry => entry.Problem.Location.Column).ToArray())
            .ToArray();
        foreach (var entries in groups)
        {
            var gone = entries.Select(entry => entry.Problem).ToHashSet(ReferenceEqualityComparer.Instance);
            _problems.RemoveAll(entry => gone.Contains(entry.Problem));
            _problems.Add((entries[0].Rank, together(entries[0].Problem, [.. entries.Skip(1).Select(entry => entry.Problem)])));
        }
    }

    /// <summary>The problems by file, line and column; those of one place stay in the order they were found.</summary>
    public IReadOnlyList<Problem> InFileOrder() =>
        [.. _problems
            .OrderBy(entry => entry.Rank)
            .ThenBy(entry => entry.Problem.Location.Line)
            .ThenBy(entry => entry.Problem.Location.Column)
            .Select(entry => entry.Problem)];
}
