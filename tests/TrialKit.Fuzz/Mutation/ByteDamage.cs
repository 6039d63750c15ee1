namespace TrialKit.Fuzz.Mutation;

/// <summary>Changes bytes: flipped, put in, taken out, repeated, moved, cut off.</summary>
internal static class ByteDamage
{
    private static readonly byte[] Telling = [0x00, 0x09, 0x0A, 0x0D, 0x1A, 0x22, 0x23, 0x27, 0x2C, 0x3B, 0x3D, 0x5B, 0x7F, 0x80, 0xC0, 0xE2, 0xED, 0xF4, 0xFE, 0xFF];

    /// <summary>The bytes with a few damages.</summary>
    public static byte[] Apply(byte[] sound, Random random)
    {
        var bytes = new List<byte>(sound);
        for (var damages = Damages.Few(random); damages > 0; damages--)
        {
            Once(bytes, random);
        }

        return [.. bytes];
    }

    private static void Once(List<byte> bytes, Random random)
    {
        if (bytes.Count == 0)
        {
            bytes.Add(Any(random));
            return;
        }

        var at = random.Next(bytes.Count);
        var length = Math.Min(bytes.Count - at, 1 + random.Next(16));
        switch (random.Next(8))
        {
            case 0:
                bytes[at] ^= (byte)(1 << random.Next(8));
                break;
            case 1:
                bytes.Insert(at, Any(random));
                break;
            case 2:
                bytes.RemoveRange(at, length);
                break;
            case 3:
                bytes.InsertRange(at, bytes.GetRange(at, length));
                break;
            case 4:
                var moved = bytes.GetRange(at, length);
                bytes.RemoveRange(at, length);
                bytes.InsertRange(random.Next(bytes.Count + 1), moved);
                break;
            case 5 when random.Next(4) == 0:
                bytes.RemoveRange(at, bytes.Count - at);
                break;
            default:
                bytes[at] = Any(random);
                break;
        }
    }

    private static byte Any(Random random) => random.Next(2) == 0 ? Telling[random.Next(Telling.Length)] : (byte)random.Next(256);
}
