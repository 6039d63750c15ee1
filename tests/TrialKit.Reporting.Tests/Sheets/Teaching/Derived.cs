namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>One answer as this project works it out from the text of a student's sheet.</summary>
/// <param name="Id">The name of the answer in the key.</param>
/// <param name="Number">The number; null for an answer in words.</param>
/// <param name="Words">The words; null for a number.</param>
internal sealed record Derived(string Id, decimal? Number, string? Words)
{
    public static Derived Of(string id, decimal number) => new(id, number, null);

    public static Derived Of(string id, string words) => new(id, null, words);
}
