using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace TrialKit.Reporting.Pdf;

/// <summary>Replaces what a PDF writer draws at random, at the same length, so that the same content gives the same bytes.</summary>
/// <remarks>Random are the six letters before a subset font's name, the identifiers in the metadata and those in the trailer.</remarks>
internal static partial class StableBytes
{
    /// <summary>The file with its random marks replaced by marks derived from its content.</summary>
    public static byte[] Of(byte[] file)
    {
        // Latin-1 maps each byte to one character and back, so that places in the text are places in the file.
        var text = Encoding.Latin1.GetString(file);
        var tags = new Dictionary<string, string>(StringComparer.Ordinal);
        text = SubsetTag().Replace(text, match =>
        {
            if (!tags.TryGetValue(match.Value, out var tag))
            {
                tag = Letters(tags.Count);
                tags.Add(match.Value, tag);
            }

            return tag;
        });
        text = Uuid().Replace(text, Guid.Empty.ToString());
        text = TrailerId().Replace(text, match => BlankDigits(match.Value));

        var digest = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(text)));
        text = Uuid().Replace(text, _ => UuidFrom(digest));
        text = TrailerId().Replace(text, match => FillDigits(match.Value, digest));
        return Encoding.Latin1.GetBytes(text);
    }

    private static string Letters(int number)
    {
        var letters = new char[6];
        for (var i = letters.Length - 1; i >= 0; i--)
        {
            letters[i] = (char)('A' + (number % 26));
            number /= 26;
        }

        return new string(letters);
    }

    private static string UuidFrom(string digest)
    {
        var hex = digest.ToLowerInvariant();
        return $"{hex[..8]}-{hex[8..12]}-{hex[12..16]}-{hex[16..20]}-{hex[20..32]}";
    }

    private static string BlankDigits(string value) => HexString().Replace(value, match => $"<{new string('0', match.Length - 2)}>");

    private static string FillDigits(string value, string digest) =>
        HexString().Replace(value, match => $"<{string.Concat(Enumerable.Repeat(digest, 1 + (match.Length / digest.Length)))[..(match.Length - 2)]}>");

    [GeneratedRegex(@"(?<=/)[A-Z]{6}(?=\+[A-Za-z])", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex SubsetTag();

    [GeneratedRegex(
        "[0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12}",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        5000)]
    private static partial Regex Uuid();

    [GeneratedRegex(
        @"/ID\s*\[\s*<[0-9A-Fa-f]+>\s*<[0-9A-Fa-f]+>\s*\]",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        5000)]
    private static partial Regex TrailerId();

    [GeneratedRegex("<[0-9A-Fa-f]+>", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex HexString();
}
