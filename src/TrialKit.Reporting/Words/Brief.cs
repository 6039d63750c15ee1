namespace TrialKit.Reporting.Words;

/// <summary>The beginning of a text where room is short.</summary>
internal static class Brief
{
    /// <summary>As many whole sentences as fit, and an ellipsis where there are more.</summary>
    /// <param name="text">The text.</param>
    /// <param name="most">The most letters, 2 or more.</param>
    public static string Sentences(string text, int most)
    {
        var end = text.Length > most ? text.LastIndexOf(". ", most - 2, StringComparison.Ordinal) : -1;
        return end > 0 ? $"{text[..(end + 1)]} …" : Of(text, most);
    }

    /// <summary>The text, or as many of its whole words as fit into some letters with an ellipsis behind them.</summary>
    /// <param name="text">The text.</param>
    /// <param name="most">The most letters, 2 or more.</param>
    public static string Of(string text, int most)
    {
        if (text.Length <= most)
        {
            return text;
        }

        var cut = text.LastIndexOf(' ', most - 1);
        var end = cut > most / 2 ? cut : most - 1;
        return text[..(char.IsHighSurrogate(text[end - 1]) ? end - 1 : end)].TrimEnd(' ', ',', ';', ':') + "…";
    }
}
