using System.Buffers;
using System.Buffers.Text;

namespace TrialKit.Ingest.Cells;

/// <summary>Numbers as cells and quantities hold them: digits with an optional sign, point and exponent; no thousands separator.</summary>
internal static class NumberCell
{
    /// <summary>No quantity of a field trial comes near; beyond it a cell holds a slip, and sums of squares would overflow in the end.</summary>
    private const double Largest = 1e15;

    private const int LongestNumber = 64;

    private static readonly SearchValues<byte> Characters = SearchValues.Create("+-0123456789.,eE"u8);

    /// <summary>Whether the cell says that nothing was recorded: empty, <c>NA</c> or a single point.</summary>
    public static bool IsNotRecorded(ReadOnlySpan<byte> cell) =>
        cell.IsEmpty || cell.SequenceEqual("."u8) || (cell.Length == 2 && (cell[0] | 0x20) == 'n' && (cell[1] | 0x20) == 'a');

    /// <summary>Reads the whole cell as a finite number.</summary>
    /// <param name="cell">UTF-8 without outer spaces.</param>
    /// <param name="decimalComma">Whether a comma stands for the decimal point.</param>
    /// <param name="value">The number.</param>
    public static bool TryRead(ReadOnlySpan<byte> cell, bool decimalComma, out double value)
    {
        if (cell.IsEmpty || cell.Length > LongestNumber || cell.ContainsAnyExcept(Characters))
        {
            value = 0;
            return false;
        }

        if (decimalComma && cell.Contains((byte)','))
        {
            Span<byte> pointed = stackalloc byte[LongestNumber];
            cell.CopyTo(pointed);
            pointed = pointed[..cell.Length];
            pointed.Replace((byte)',', (byte)'.');
            return TryReadPointed(pointed, out value);
        }

        return TryReadPointed(cell, out value);
    }

    private static bool TryReadPointed(ReadOnlySpan<byte> cell, out double value) =>
        Utf8Parser.TryParse(cell, out value, out var used) && used == cell.Length && Math.Abs(value) <= Largest;
}
