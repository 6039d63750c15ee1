using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using TrialKit.Reporting.Pdf;

namespace TrialKit.Reporting.Tests.Pdf;

public partial class StreamChecksumsTests
{
    [Fact]
    public void Complete_Report_LeavesEveryStreamReadableByAStrictReader()
    {
        var file = PdfReport.Loose(Gallery.Named("report"));
        var text = Encoding.Latin1.GetString(file);
        var streams = 0;
        foreach (Match match in Stream().Matches(text).Where(match => match.Groups["dictionary"].Value.Contains("/FlateDecode", StringComparison.Ordinal)))
        {
            var size = int.Parse(match.Groups["size"].Value, System.Globalization.CultureInfo.InvariantCulture);
            var packed = file[(match.Index + match.Length)..][..size];
            using var zlib = new ZLibStream(new MemoryStream(packed), CompressionMode.Decompress);
            using var content = new MemoryStream();
            zlib.CopyTo(content);
            Assert.Equal(Adler32(content.ToArray()), packed[^4..]);
            Assert.StartsWith("\nendstream", text[(match.Index + match.Length + size)..], StringComparison.Ordinal);
            streams++;
        }

        Assert.True(streams > 10, $"{streams} streams");
    }

    [Fact]
    public void Complete_Report_PointsEveryEntryAtItsObject()
    {
        var text = Encoding.Latin1.GetString(PdfReport.Loose(Gallery.Named("report")));
        var start = int.Parse(StartOfTable().Match(text).Groups["place"].Value, System.Globalization.CultureInfo.InvariantCulture);
        Assert.StartsWith("xref\n", text[start..], StringComparison.Ordinal);
        var entries = Entry().Matches(text[start..]);

        Assert.NotEmpty(entries);
        for (var i = 0; i < entries.Count; i++)
        {
            var place = int.Parse(entries[i].Groups["place"].Value, System.Globalization.CultureInfo.InvariantCulture);
            Assert.StartsWith(FormattableString.Invariant($"{i + 1} 0 obj"), text[place..], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Complete_CompleteFile_ChangesNothing()
    {
        var file = StreamChecksums.Complete(Encoding.Latin1.GetBytes(Minimal));

        Assert.Equal(Minimal, Encoding.Latin1.GetString(file));
    }

    [Fact]
    public void Complete_NoTable_IsRefused() =>
        Assert.Throws<InvalidOperationException>(() => StreamChecksums.Complete("%PDF-1.7\n"u8.ToArray()));

    private const string Minimal = "%PDF-1.7\n1 0 obj\n<<>>\nendobj\nxref\n0 2\n0000000000 65535 f \n0000000009 00000 n \ntrailer\n<</Size 2>>\nstartxref\n29\n%%EOF\n";

    // The sum as RFC 1950 gives it, most significant byte first.
    private static byte[] Adler32(byte[] data)
    {
        uint a = 1, b = 0;
        foreach (var value in data)
        {
            a = (a + value) % 65521;
            b = (b + a) % 65521;
        }

        return [(byte)(b >> 8), (byte)b, (byte)(a >> 8), (byte)a];
    }

    [GeneratedRegex(
        @"obj\n(?<dictionary><<(?:(?!endobj|stream\n).)*/Length (?<size>\d+)(?:(?!endobj|stream\n).)*)\nstream\n",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        5000)]
    private static partial Regex Stream();

    [GeneratedRegex(@"startxref\n(?<place>\d+)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex StartOfTable();

    [GeneratedRegex(@"(?<place>\d{10}) \d{5} n", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Entry();
}
