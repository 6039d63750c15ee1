using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>One question of an exercise: on the student's sheet its words and room to work, in the key its steps.</summary>
/// <param name="Text">The words; they say to how many decimals each number is to be rounded.</param>
/// <param name="Room">Room to work: answer lines, forms.</param>
/// <param name="Steps">The steps of the key.</param>
public sealed record Question(string Text, IReadOnlyList<Block> Room, IReadOnlyList<KeyStep> Steps)
{
    /// <summary>What the key adds for the teacher; null for nothing.</summary>
    public string? Remark { get; init; }
}
