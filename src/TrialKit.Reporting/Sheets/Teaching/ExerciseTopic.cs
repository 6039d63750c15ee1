using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>A topic that exercises are made for.</summary>
public sealed class ExerciseTopic
{
    private readonly Func<InventedNumbers, ExerciseLevel, ExercisePaper> make;

    internal ExerciseTopic(string id, string title, int minutes, string first, string second, Func<InventedNumbers, ExerciseLevel, ExercisePaper> make)
    {
        (Id, Title, Minutes, First, Second) = (id, title, minutes, first, second);
        this.make = make;
    }

    /// <summary>A stable name, such as <c>paired-t</c>.</summary>
    public string Id { get; }

    /// <summary>The title of its sheets.</summary>
    public string Title { get; }

    /// <summary>Minutes that a class takes for the first level.</summary>
    public int Minutes { get; }

    /// <summary>What the first level asks.</summary>
    public string First { get; }

    /// <summary>What the second level asks.</summary>
    public string Second { get; }

    /// <summary>An exercise; the same seed gives the same.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="level">How much it asks.</param>
    public Exercise Make(ulong seed, ExerciseLevel level) => new(this, seed, level, make(new InventedNumbers(seed), level));
}
