using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>What an exercise is made of, with the numbers of one seed.</summary>
public sealed record ExercisePaper
{
    /// <summary>The situation: paragraphs, data and tables that the student is given.</summary>
    public required IReadOnlyList<Block> Given { get; init; }

    /// <summary>The questions, each building on those before.</summary>
    public required IReadOnlyList<Question> Questions { get; init; }

    /// <summary>A common wrong answer.</summary>
    public required WrongAnswer Wrong { get; init; }

    /// <summary>What is true of the field, one thing or more.</summary>
    public required IReadOnlyList<ExerciseTruth> Truths { get; init; }

    /// <summary>How the data were drawn, for the key.</summary>
    public required string Drawn { get; init; }

    /// <summary>Where the methods are published.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>The data as the files of a trial folder.</summary>
    public required IReadOnlyList<ExerciseFile> Files { get; init; }

    /// <summary>What must stand on both sheets, such as the cautions of a topic near the seed; empty unless given.</summary>
    public IReadOnlyList<Block> Cautions { get; init; } = [];

    /// <summary>Every step of the key, those of the wrong answer last.</summary>
    public IEnumerable<KeyStep> Key => Questions.SelectMany(question => question.Steps).Concat(Wrong.Steps);
}
