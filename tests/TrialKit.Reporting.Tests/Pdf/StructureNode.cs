using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace TrialKit.Reporting.Tests.Pdf;

/// <summary>A node of a file's structure tree, as another reader finds it.</summary>
internal sealed record StructureNode(string Kind, string? Alternative, string? Scope, IReadOnlyList<StructureNode> Children)
{
    public IEnumerable<StructureNode> All() => Children.SelectMany(child => child.All()).Prepend(this);

    public static StructureNode Root(PdfDocument document) =>
        Read(document, (DictionaryToken)Get(document, document.Structure.Catalog.CatalogDictionary, "StructTreeRoot")!);

    private static StructureNode Read(PdfDocument document, DictionaryToken node)
    {
        var kids = Get(document, node, "K") switch
        {
            ArrayToken array => array.Data.Select(each => Resolve(document, each)).OfType<DictionaryToken>(),
            DictionaryToken one => [one],
            _ => [],
        };
        var attributes = Get(document, node, "A") as DictionaryToken;
        return new(
            (Get(document, node, "S") as NameToken)?.Data ?? "root",
            Text(Get(document, node, "Alt")),
            attributes is null ? null : (Get(document, attributes, "Scope") as NameToken)?.Data,
            [.. kids.Where(kid => kid.ContainsKey(NameToken.Create("S"))).Select(kid => Read(document, kid))]);
    }

    public static IToken? Get(PdfDocument document, DictionaryToken dictionary, string key) =>
        dictionary.TryGet(NameToken.Create(key), out var token) ? Resolve(document, token) : null;

    private static IToken? Resolve(PdfDocument document, IToken? token) =>
        token is IndirectReferenceToken reference ? document.Structure.GetObject(reference.Data).Data : token;

    private static string? Text(IToken? token) => token switch
    {
        StringToken text => text.Data,
        HexToken hex => hex.Data,
        _ => null,
    };
}
