namespace TrialKit.Ingest.Toml;

/// <summary>A value of <c>trial.toml</c> and where it stands.</summary>
/// <param name="At">Its first character.</param>
internal abstract record TomlNode(ProblemLocation At);

/// <summary>A string.</summary>
internal sealed record TomlText(ProblemLocation At, string Value) : TomlNode(At);

/// <summary>A whole number or a decimal one, with its digits as written.</summary>
internal sealed record TomlNumber(ProblemLocation At, double Value, string Written) : TomlNode(At);

/// <summary>A truth value.</summary>
internal sealed record TomlFlag(ProblemLocation At, bool Value) : TomlNode(At);

/// <summary>A date or a date and time, as written.</summary>
internal sealed record TomlDate(ProblemLocation At, string Written) : TomlNode(At);

/// <summary>A list of values.</summary>
internal sealed record TomlList(ProblemLocation At, List<TomlNode> Items) : TomlNode(At);

/// <summary>Keys and their values, in the file's order.</summary>
internal sealed record TomlMap(ProblemLocation At) : TomlNode(At)
{
    /// <summary>The keys, where each stands, and its value.</summary>
    public Dictionary<string, (ProblemLocation KeyAt, TomlNode Value)> Entries { get; } = new(StringComparer.Ordinal);
}
