using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Pdf;

/// <summary>Sizes and margins of printed pages, in points. Nothing is set below 9.</summary>
internal static class PageStyle
{
    /// <summary>White space left and right.</summary>
    public const double SideMargin = 62;

    /// <summary>White space above the text.</summary>
    public const double TopMargin = 56;

    /// <summary>White space below the text; the footer stands in it.</summary>
    public const double BottomMargin = 62;

    /// <summary>Baseline of the footer, from the page's lower edge.</summary>
    public const double FooterBaseline = 38;

    /// <summary>Baseline of the running head, from the page's upper edge.</summary>
    public const double HeadBaseline = 40;

    /// <summary>The widest a paragraph runs: about 85 letters, beyond which the eye loses the line.</summary>
    public const double Measure = 440;

    /// <summary>Size of running text.</summary>
    public const double Body = 10.5;

    /// <summary>Size of a leading sentence.</summary>
    public const double Lead = 12.5;

    /// <summary>Size of notes, captions below and footers.</summary>
    public const double Small = 9;

    /// <summary>Size of the text of tables.</summary>
    public const double Cell = 9.5;

    /// <summary>Height of a line as a multiple of its size.</summary>
    public const double Leading = 1.36;

    /// <summary>Width of the strip in which interval marks stand.</summary>
    public const double MarkWidth = 124;

    /// <summary>White space between a sentence and its mark.</summary>
    public const double MarkGap = 26;

    /// <summary>Size of a heading.</summary>
    public static double HeadingSize(int level) => level switch
    {
        1 => 21,
        2 => 13.5,
        _ => 11,
    };

    /// <summary>White space above a heading.</summary>
    public static double HeadingSpace(int level) => level switch
    {
        1 => 6,
        2 => 22,
        _ => 14,
    };

    /// <summary>Size of a paragraph's text.</summary>
    public static double Size(TextSize size) => size switch
    {
        TextSize.Lead => Lead,
        TextSize.Small => Small,
        _ => Body,
    };

    /// <summary>Width and height of a sheet.</summary>
    public static (double Width, double Height) Sheet(PageSize size) => size switch
    {
        PageSize.Letter => (612, 792),
        PageSize.A4 => (595.276, 841.89),
        _ => throw new ArgumentOutOfRangeException(nameof(size), size, "A page is letter or A4."),
    };
}
