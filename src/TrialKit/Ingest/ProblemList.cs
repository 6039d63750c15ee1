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

    /// <summary>The problems by file, line and column; those of one place stay in the order they were found.</summary>
    public IReadOnlyList<Problem> InFileOrder() =>
        [.. _problems
            .OrderBy(entry => entry.Rank)
            .ThenBy(entry => entry.Problem.Location.Line)
            .ThenBy(entry => entry.Problem.Location.Column)
            .Select(entry => entry.Problem)];
}
