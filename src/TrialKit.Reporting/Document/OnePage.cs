namespace TrialKit.Reporting.Document;

/// <summary>A page that is one sheet, whatever it has to say: on paper the first of its drafts that fits is printed, elsewhere the first.</summary>
/// <remarks>A draft never gets smaller letters, only less to say: each shorter one lists fewer things and says how many it leaves out.</remarks>
/// <param name="Drafts">The page from its fullest to its shortest, one or more.</param>
/// <exception cref="ArgumentException">There is no draft.</exception>
public sealed record OnePage(IReadOnlyList<IReadOnlyList<Block>> Drafts) : Block
{
    /// <summary>The page from its fullest to its shortest, one or more.</summary>
    public IReadOnlyList<IReadOnlyList<Block>> Drafts { get; init; } = Drafts is { Count: > 0 }
        ? Drafts
        : throw new ArgumentException("A page has one draft or more; found none.", nameof(Drafts));
}
