namespace TrialKit.Ingest.Workbooks;

/// <summary>The checksum of a ZIP archive's parts: the remainder by the polynomial 0x04C11DB7, bits reversed.</summary>
/// <remarks>PKWARE APPNOTE.TXT 6.3.10, section 4.4.7. The sum of the nine ASCII digits "123456789" is 0xCBF43926.</remarks>
internal static class Crc32
{
    /// <summary>The sum of nothing, to begin with.</summary>
    public const uint Start = 0xFFFFFFFF;

    private const uint Reversed = 0xEDB88320;

    private static readonly uint[] Remainders = [.. Enumerable.Range(0, 256).Select(value => Remainder((uint)value))];

    /// <summary>The running sum with more bytes.</summary>
    public static uint Add(uint sum, ReadOnlySpan<byte> bytes)
    {
        foreach (var value in bytes)
        {
            sum = Remainders[(byte)(sum ^ value)] ^ (sum >> 8);
        }

        return sum;
    }

    /// <summary>The checksum of a running sum.</summary>
    public static uint Finish(uint sum) => ~sum;

    private static uint Remainder(uint value)
    {
        for (var bit = 0; bit < 8; bit++)
        {
            value = (value & 1) == 0 ? value >> 1 : Reversed ^ (value >> 1);
        }

        return value;
    }
}
