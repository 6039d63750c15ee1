namespace TrialKit.Results;

/// <summary>Something a careful reader should know or doubt.</summary>
/// <param name="Id">A stable name, such as <c>few-pairs</c>.</param>
/// <param name="Weight">How much it should weigh.</param>
/// <param name="Message">A sentence for the reader.</param>
/// <param name="Where">The measure, strip or spot it is about; null when it is about the whole trial.</param>
public sealed record Finding(string Id, FindingWeight Weight, string Message, string? Where = null);
