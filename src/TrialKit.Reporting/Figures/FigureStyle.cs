using SkiaSharp;

namespace TrialKit.Reporting.Figures;

/// <summary>The one style of all figures and marks: tones, strokes and sizes, in points.</summary>
internal static class FigureStyle
{
    /// <summary>Text that is read first.</summary>
    public static readonly SKColor Ink = SKColor.Parse("#1F2328");

    /// <summary>Text that may be passed over: units, dates, notes.</summary>
    public static readonly SKColor Quiet = SKColor.Parse("#5E646B");

    /// <summary>Lines that only guide the eye.</summary>
    public static readonly SKColor Grid = SKColor.Parse("#E4E6E8");

    /// <summary>Axes, ticks, rules and the zero line.</summary>
    public static readonly SKColor Axis = SKColor.Parse("#9BA1A7");

    /// <summary>The ground of a stretch set apart.</summary>
    public static readonly SKColor Wash = SKColor.Parse("#F2F3F4");

    /// <summary>The control: a neutral, the lightest of the tones.</summary>
    public static readonly SKColor Control = SKColor.Parse("#909398");

    /// <summary>The name of the control beside its line: its tone, dark enough for text.</summary>
    public static readonly SKColor ControlText = SKColor.Parse("#6A6E74");

    /// <summary>The treatments in order. Each differs from the others and from the control in lightness as well as in hue.</summary>
    public static readonly IReadOnlyList<SKColor> Treatments =
    [
        SKColor.Parse("#284485"),
        SKColor.Parse("#AC5419"),
        SKColor.Parse("#272038"),
        SKColor.Parse("#4981D6"),
        SKColor.Parse("#774F4E"),
        SKColor.Parse("#602003"),
    ];

    /// <summary>Steps of one quantity, the least first: each darker than the one before.</summary>
    public static readonly IReadOnlyList<SKColor> Steps =
    [
        SKColor.Parse("#C3D3EA"),
        SKColor.Parse("#A1BBE1"),
        SKColor.Parse("#7FA2D5"),
        SKColor.Parse("#5F8AC6"),
        SKColor.Parse("#4068A8"),
        SKColor.Parse("#284485"),
        SKColor.Parse("#152455"),
    ];

    /// <summary>What marks one among others as late.</summary>
    public static readonly SKColor Late = SKColor.Parse("#AC5419");

    /// <summary>Size of axis titles and direct labels.</summary>
    public const float LabelSize = 9.5f;

    /// <summary>Size of tick labels and of all else that is small; nothing is smaller.</summary>
    public const float SmallSize = 9f;

    /// <summary>A treatment's fitted curve, a mean's bar.</summary>
    public const float StrongStroke = 2.2f;

    /// <summary>A strip's line, a join between pairs.</summary>
    public const float ThinStroke = 0.7f;

    /// <summary>Axes, ticks and grid.</summary>
    public const float HairStroke = 0.6f;

    /// <summary>Diameter of the dot of an estimate.</summary>
    public const float EstimateDot = 7f;

    /// <summary>Diameter of the dot of one strip or pair.</summary>
    public const float StripDot = 5f;

    /// <summary>The tone of a treatment; after the last one they begin again, told apart by <see cref="Stroke"/>.</summary>
    /// <param name="tone">0 for the control, then 1 and up in the order of the treatments.</param>
    /// <exception cref="ArgumentOutOfRangeException">A tone is below 0.</exception>
    public static SKColor Tone(int tone) => CheckTone(tone) == 0 ? Control : Treatments[(tone - 1) % Treatments.Count];

    /// <summary>How a treatment's line is broken: not at all for the first round of tones, by dashes for the second, by dots after.</summary>
    /// <param name="tone">0 for the control, then 1 and up in the order of the treatments.</param>
    public static LineStroke Stroke(int tone) => ((Math.Max(CheckTone(tone), 1) - 1) / Treatments.Count) switch
    {
        0 => LineStroke.Whole,
        1 => LineStroke.Dashed,
        _ => LineStroke.Dotted,
    };

    /// <summary>The tone of a treatment's name.</summary>
    /// <param name="tone">0 for the control, then 1 and up in the order of the treatments.</param>
    public static SKColor TextTone(int tone) => tone == 0 ? ControlText : Tone(tone);

    /// <summary>The tone, or what is wrong with it.</summary>
    public static int CheckTone(int tone) => tone >= 0
        ? tone
        : throw new ArgumentOutOfRangeException(
            nameof(tone),
            tone,
            "The control has tone 0 and treatments have 1 and up.");
}
