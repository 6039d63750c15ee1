using PdfSharp.Fonts;
using SkiaSharp;

namespace TrialKit.Reporting.Fonts;

/// <summary>The fonts that travel inside the assembly, so that a page is the same on a machine without any.</summary>
internal static class BundledFonts
{
    /// <summary>The family all four faces belong to.</summary>
    public const string Family = "IBM Plex Sans";

    private static readonly Lazy<Loaded>[] Faces =
    [
        new(() => Load("IBMPlexSans_400Regular.ttf")),
        new(() => Load("IBMPlexSans_400Regular_Italic.ttf")),
        new(() => Load("IBMPlexSans_600SemiBold.ttf")),
        new(() => Load("IBMPlexSans_600SemiBold_Italic.ttf")),
    ];

    private static readonly Lazy<bool> Registration = new(RegisterOnce);

    /// <summary>The face for a weight and a slant.</summary>
    public static BundledFace Face(bool strong, bool italic) => (strong, italic) switch
    {
        (false, false) => BundledFace.Regular,
        (false, true) => BundledFace.Italic,
        (true, false) => BundledFace.SemiBold,
        (true, true) => BundledFace.SemiBoldItalic,
    };

    /// <summary>The font file.</summary>
    public static byte[] Bytes(BundledFace face) => Faces[(int)face].Value.Bytes;

    /// <summary>The face as Skia draws it.</summary>
    public static SKTypeface Typeface(BundledFace face) => Faces[(int)face].Value.Typeface;

    /// <summary>Makes the bundled faces the answer to every font question of the PDF and plot packages.</summary>
    /// <remarks>A host that has set its own PDF resolver keeps it: ours then answers where the host's does not.</remarks>
    public static void Register() => _ = Registration.Value;

    private static bool RegisterOnce()
    {
        if (GlobalFontSettings.FontResolver is null)
        {
            GlobalFontSettings.FontResolver = new PdfFontResolver();
        }
        else
        {
            GlobalFontSettings.FallbackFontResolver ??= new PdfFontResolver();
        }

        ScottPlot.Fonts.FontResolvers.Insert(0, new PlotFontResolver());
        ScottPlot.Fonts.Default = Family;
        return true;
    }

    private static Loaded Load(string file)
    {
        var name = $"{typeof(BundledFonts).Namespace}.{file}";
        using var stream = typeof(BundledFonts).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The font {name} is not in the assembly.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        using var data = SKData.CreateCopy(bytes);
        return new Loaded(bytes, SKTypeface.FromData(data));
    }

    private sealed record Loaded(byte[] Bytes, SKTypeface Typeface);
}
