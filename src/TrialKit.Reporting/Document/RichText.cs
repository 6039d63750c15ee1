namespace TrialKit.Reporting.Document;

/// <summary>Text of one paragraph, with parts that stand out.</summary>
/// <param name="Runs">The parts in reading order.</param>
public sealed record RichText(IReadOnlyList<TextRun> Runs)
{
    /// <summary>The text without its emphasis.</summary>
    public string Plain => string.Concat(Runs.Select(run => run.Text));

    /// <summary>Text that begins plain.</summary>
    public static RichText Of(string text) => new([new TextRun(text)]);

    /// <summary>Text that begins with words that stand out.</summary>
    public static RichText Of(string text, Emphasis emphasis) => new([new TextRun(text, emphasis)]);

    /// <summary>The text with plain words added.</summary>
    public RichText Then(string text) => Then(text, Emphasis.None);

    /// <summary>The text with words added that stand out.</summary>
    public RichText Then(string text, Emphasis emphasis) => new([.. Runs, new TextRun(text, emphasis)]);

    /// <summary>The text with another after it.</summary>
    public RichText Then(RichText more)
    {
        ArgumentNullException.ThrowIfNull(more);
        return new([.. Runs, .. more.Runs]);
    }

    /// <summary>A string is plain text.</summary>
    public static implicit operator RichText(string text) => Of(text);
}
