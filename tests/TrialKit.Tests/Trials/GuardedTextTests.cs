using CsCheck;
using TrialKit.Trials;

namespace TrialKit.Tests.Trials;

public class GuardedTextTests
{
    private static readonly string[] Pieces = ["=", "+", "-", "@", "\t", "\r", "\n", "'", "''", "1", ".", "A", " ", "\uFF1D", "e5", "|"];

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+SUM(A1)", "'+SUM(A1)")]
    [InlineData("-1+cmd|' /C calc'!A0", "'-1+cmd|' /C calc'!A0")]
    [InlineData("@x", "'@x")]
    [InlineData("\tx", "'\tx")]
    [InlineData("\rx", "'\rx")]
    [InlineData("'=1", "''=1")]
    [InlineData("\uFF1D1", "'\uFF1D1")]
    [InlineData("-3.2", "-3.2")]
    [InlineData("+5e-3", "+5e-3")]
    [InlineData("chains", "chains")]
    [InlineData("'quoted'", "'quoted'")]
    [InlineData("10-34-0", "10-34-0")]
    [InlineData("", "")]
    public void Guard_Text_IsWrittenAsExpectedAndReadsBack(string text, string written)
    {
        Assert.Equal(written, GuardedText.Guard(text));
        Assert.Equal(text, GuardedText.Unguard(written));
    }

    [Fact]
    public void Unguard_AnyGuardedText_IsTheText() => Gen.Int[0, Pieces.Length - 1].Array[0, 6]
        .Select(pieces => string.Concat(pieces.Select(piece => Pieces[piece])))
        .Sample(text =>
        {
            var written = GuardedText.Guard(text);
            return GuardedText.Unguard(written) == text
                && (written.Length == 0 || !"=+-@\t\r\n\uFF1D".Contains(written[0], StringComparison.Ordinal) || double.TryParse(written, System.Globalization.CultureInfo.InvariantCulture, out _));
        }, iter: 2000);
}
