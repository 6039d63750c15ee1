namespace TrialKit.Reporting.Document;

/// <summary>Room to work with a pencil: faint lines, and below them a named box for each answer.</summary>
/// <param name="Lines">Lines to write on, 0 or more.</param>
/// <param name="Answers">What goes into each box, such as <c>mean difference, plants</c>; may be empty.</param>
public sealed record AnswerRoom(int Lines, params IReadOnlyList<string> Answers) : Block
{
    /// <summary>Lines to write on, 0 or more.</summary>
    public int Lines { get; init; } = Lines >= 0
        ? Lines
        : throw new ArgumentOutOfRangeException(nameof(Lines), Lines, "Room has 0 lines or more.");

    /// <summary>Whether it stands on the page of what follows.</summary>
    public bool StaysWithNext { get; init; }
}
