namespace TrialKit.Reporting.Pdf;

/// <summary>What a part of a page is to a reader that does not see it.</summary>
internal enum TagKind
{
    /// <summary>The title.</summary>
    Heading1,

    /// <summary>A part's heading.</summary>
    Heading2,

    /// <summary>A heading within a part.</summary>
    Heading3,

    /// <summary>A paragraph.</summary>
    Paragraph,

    /// <summary>The caption of a table or figure.</summary>
    Caption,

    /// <summary>A list.</summary>
    List,

    /// <summary>A point of a list.</summary>
    ListItem,

    /// <summary>The bullet of a point.</summary>
    ListLabel,

    /// <summary>The text of a point.</summary>
    ListBody,

    /// <summary>A table.</summary>
    Table,

    /// <summary>A row.</summary>
    TableRow,

    /// <summary>The head of a column.</summary>
    TableHeader,

    /// <summary>A cell.</summary>
    TableCell,

    /// <summary>A figure, with its alternative text.</summary>
    Figure,
}
