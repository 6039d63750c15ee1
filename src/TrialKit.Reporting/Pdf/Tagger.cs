using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace TrialKit.Reporting.Pdf;

/// <summary>Opens and closes structure elements so that each item is drawn inside the node it belongs to.</summary>
/// <param name="builder">The structure of the document being drawn.</param>
/// <param name="pageHeight">The height of its pages.</param>
internal sealed class Tagger(StructureBuilder builder, double pageHeight)
{
    private readonly List<Tag> open = [];

    /// <summary>Draws an item inside its node, or outside the structure where it has none.</summary>
    public void Draw(PlacedItem item, Action draw)
    {
        if (item.Tag is null)
        {
            builder.BeginArtifact();
            draw();
            builder.End();
            return;
        }

        MoveTo(item.Tag, item.Box);
        draw();
    }

    /// <summary>Closes what is open.</summary>
    public void Close()
    {
        CloseTo(0);
    }

    private void MoveTo(Tag tag, Box box)
    {
        var path = tag.Path().ToList();
        var shared = open.Zip(path).TakeWhile(pair => ReferenceEquals(pair.First, pair.Second)).Count();
        CloseTo(shared);
        foreach (var node in path.Skip(shared))
        {
            Open(node, box);
            open.Add(node);
        }
    }

    private void CloseTo(int depth)
    {
        while (open.Count > depth)
        {
            builder.End();
            open.RemoveAt(open.Count - 1);
        }
    }

    private void Open(Tag tag, Box box)
    {
        switch (tag.Kind)
        {
            // The bounds of a figure are measured from the page's lower edge.
            case TagKind.Figure:
                builder.BeginElement(
                    PdfIllustrationElementTag.Figure, tag.Alternative ?? string.Empty, new XRect(box.X, pageHeight - box.Bottom, box.Width, box.Height));
                break;
            case TagKind.Caption:
                builder.BeginElement(PdfGroupingElementTag.Caption);
                break;
            case TagKind.TableHeader:
                builder.BeginElement(PdfBlockLevelElementTag.TableHeaderCell);
                SetColumnScope();
                break;
            default:
                builder.BeginElement(BlockTag(tag.Kind));
                break;
        }
    }

    // A header names its column: without the scope a reader cannot say which cells it heads.
    private void SetColumnScope()
    {
        var attributes = new PdfDictionary();
        attributes.Elements.SetName("/O", "/Table");
        attributes.Elements.SetName("/Scope", "/Column");
        builder.CurrentStructureElement.Elements["/A"] = attributes;
    }

    private static PdfBlockLevelElementTag BlockTag(TagKind kind) => kind switch
    {
        TagKind.Heading1 => PdfBlockLevelElementTag.Heading1,
        TagKind.Heading2 => PdfBlockLevelElementTag.Heading2,
        TagKind.Heading3 => PdfBlockLevelElementTag.Heading3,
        TagKind.List => PdfBlockLevelElementTag.List,
        TagKind.ListItem => PdfBlockLevelElementTag.ListItem,
        TagKind.ListLabel => PdfBlockLevelElementTag.Label,
        TagKind.ListBody => PdfBlockLevelElementTag.ListBody,
        TagKind.Table => PdfBlockLevelElementTag.Table,
        TagKind.TableRow => PdfBlockLevelElementTag.TableRow,
        TagKind.TableCell => PdfBlockLevelElementTag.TableDataCell,
        _ => PdfBlockLevelElementTag.Paragraph,
    };
}
