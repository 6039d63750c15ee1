namespace TrialKit.Reporting.Document;

/// <summary>A question of an exercise, its number in the margin; it stays with the room for its answer.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Text">The question.</param>
public sealed record NumberedQuestion(int Number, RichText Text) : Block
{
    /// <summary>Its number, from 1.</summary>
    public int Number { get; init; } = Number >= 1
        ? Number
        : throw new ArgumentOutOfRangeException(nameof(Number), Number, "Questions are numbered from 1.");
}
