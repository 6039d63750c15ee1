using System.Text;
using TrialKit.Reporting.Pdf;

namespace TrialKit.Reporting.Tests.Pdf;

public class StableBytesTests
{
    private const string One = "/QWERTY+Plex /ASDFGH+Plex /QWERTY+Plex uuid:01234567-89ab-cdef-0123-456789abcdef /ID [<0123456789ABCDEF0123456789ABCDEF><0123456789ABCDEF0123456789ABCDEF>] ";
    private const string Other = "/ZXCVBN+Plex /TYUIOP+Plex /ZXCVBN+Plex uuid:fedcba98-89ab-cdef-0123-456789abcdef /ID [<FEDCBA9876543210FEDCBA9876543210><FEDCBA9876543210FEDCBA9876543210>] ";

    [Fact]
    public void Of_FilesThatDifferInRandomMarksAlone_AreMadeTheSame() => Assert.Equal(Stable(One), Stable(Other));

    [Fact]
    public void Of_FilesThatDifferInContent_GetOtherIdentifiers()
    {
        var a = Stable(One + "a");
        var b = Stable(One + "b");

        Assert.NotEqual(a[a.IndexOf("/ID", StringComparison.Ordinal)..^1], b[b.IndexOf("/ID", StringComparison.Ordinal)..^1]);
    }

    [Fact]
    public void Of_AnyFile_KeepsItsLengthAndItsOtherBytes()
    {
        var bytes = Enumerable.Range(0, 256).Select(i => (byte)i).ToArray();

        Assert.Equal(bytes, StableBytes.Of(bytes));
        Assert.Equal(One.Length, Stable(One).Length);
        Assert.StartsWith("/AAAAAA+Plex /AAAAAB+Plex /AAAAAA+Plex uuid:", Stable(One), StringComparison.Ordinal);
    }

    private static string Stable(string text) => Encoding.Latin1.GetString(StableBytes.Of(Encoding.Latin1.GetBytes(text)));
}
