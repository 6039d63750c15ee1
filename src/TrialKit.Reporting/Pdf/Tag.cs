namespace TrialKit.Reporting.Pdf;

/// <summary>A node of the structure that the page's content hangs on; two parts belong together when their node is the same object.</summary>
/// <param name="kind">What the node is.</param>
/// <param name="parent">The node it belongs to, or null for the document.</param>
/// <param name="alternative">The words that stand for a figure.</param>
internal sealed class Tag(TagKind kind, Tag? parent = null, string? alternative = null)
{
    /// <summary>What the node is.</summary>
    public TagKind Kind { get; } = kind;

    /// <summary>The node it belongs to, or null for the document.</summary>
    public Tag? Parent { get; } = parent;

    /// <summary>The words that stand for a figure.</summary>
    public string? Alternative { get; } = alternative;

    /// <summary>The nodes from the document down to this one.</summary>
    public IEnumerable<Tag> Path() => Parent is null ? [this] : Parent.Path().Append(this);
}
