namespace TrialKit.Reporting.Document;

/// <summary>How the cells of a column stand in it.</summary>
public enum ColumnAlignment
{
    /// <summary>Text: flush left.</summary>
    Left,

    /// <summary>Numbers: flush right, so that places line up.</summary>
    Right,

    /// <summary>Marks: centred.</summary>
    Centre,
}
