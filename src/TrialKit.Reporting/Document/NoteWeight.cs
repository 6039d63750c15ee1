namespace TrialKit.Reporting.Document;

/// <summary>How much a note weighs.</summary>
public enum NoteWeight
{
    /// <summary>Good to know.</summary>
    Remark,

    /// <summary>A reason to hold the result a little less firmly.</summary>
    Doubt,

    /// <summary>A reason not to rely on the result.</summary>
    Grave,
}
