using PdfSharp.Fonts;

namespace TrialKit.Reporting.Fonts;

/// <summary>Answers every family the PDF package asks for with a bundled face.</summary>
internal sealed class PdfFontResolver : IFontResolver
{
    /// <inheritdoc/>
    public FontResolverInfo ResolveTypeface(string familyName, bool bold, bool italic) =>
        new(BundledFonts.Face(bold, italic).ToString());

    /// <inheritdoc/>
    public byte[] GetFont(string faceName) => BundledFonts.Bytes(Enum.Parse<BundledFace>(faceName));
}
