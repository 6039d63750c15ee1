namespace TrialKit.Reporting.Document;

/// <summary>The sheet a report is printed on.</summary>
public enum PageSize
{
    /// <summary>US letter, 8.5 by 11 inches.</summary>
    Letter,

    /// <summary>ISO A4, 210 by 297 mm.</summary>
    A4,
}
