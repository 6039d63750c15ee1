using System.Text;

namespace TrialKit.Fuzz.Mutation;

/// <summary>Changes what holds a text together: lines, columns, line ends, separators, encoding, length, depth.</summary>
internal static class StructureDamage
{
    private const int MostCopies = 400;
    private const int Deepest = 300;
    private static readonly string[] OddLines = ["", " ", ",,,,", "# a remark", "\t", "[design]", "[[treatment]]", "a.b.c = 1", "\0"];
    private static readonly string[] Separators = [",", ";", "\t", "|", " "];

    /// <summary>The text with a few damages.</summary>
    /// <param name="sound">The sound file.</param>
    /// <param name="others">Files of the same folder, whose lines may stray into this one.</param>
    /// <param name="random">What decides.</param>
    public static byte[] Apply(byte[] sound, IReadOnlyList<byte[]> others, Random random)
    {
        var lines = Encoding.UTF8.GetString(sound).Split('\n').ToList();
        for (var damages = Damages.Few(random); damages > 0; damages--)
        {
            Once(lines, others, random);
        }

        return Encode(string.Join(LineEnd(random), lines), random);
    }

    private static void Once(List<string> lines, IReadOnlyList<byte[]> others, Random random)
    {
        var at = random.Next(lines.Count);
        switch (random.Next(14))
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(at, lines[random.Next(lines.Count)]);
                break;
            case 2:
                var other = random.Next(lines.Count);
                (lines[at], lines[other]) = (lines[other], lines[at]);
                break;
            case 3 when random.Next(8) == 0:
                lines.InsertRange(at, Enumerable.Repeat(lines[at], 1 + random.Next(MostCopies)));
                break;
            case 4:
                lines.RemoveRange(at, random.Next(lines.Count - at));
                break;
            case 5:
                lines.Insert(at, OddLines[random.Next(OddLines.Length)]);
                break;
            case 6:
                Columns(lines, random);
                break;
            case 7:
                var (old, replacement) = (Separators[random.Next(3)], Separators[random.Next(Separators.Length)]);
                lines.ForEachIndex(line => line.Replace(old, replacement, StringComparison.Ordinal));
                break;
            case 8:
                var stray = Encoding.UTF8.GetString(others[random.Next(others.Count)]).Split('\n');
                lines.Insert(at, stray[random.Next(stray.Length)]);
                break;
            case 9:
                lines[at] = lines[at] + lines[random.Next(lines.Count)];
                break;
            case 10 when random.Next(4) == 0:
                var deep = 1 + random.Next(Deepest);
                lines.Insert(at, "deep = " + new string(random.Next(2) == 0 ? '[' : '{', deep) + (random.Next(2) == 0 ? new string(']', deep) : ""));
                break;
            case 11 when random.Next(4) == 0:
                lines.Insert(at, string.Join('.', Enumerable.Repeat("a", 1 + random.Next(Deepest))) + " = 1");
                break;
            case 12:
                lines[at] = lines[at][..random.Next(lines[at].Length + 1)];
                break;
            default:
                lines[at] = $"\"{lines[at].Replace(",", random.Next(2) == 0 ? "\",\"" : ",", StringComparison.Ordinal)}\"";
                break;
        }

        if (lines.Count == 0)
        {
            lines.Add(string.Empty);
        }
    }

    /// <summary>A column taken out, doubled, emptied or moved, in every line alike.</summary>
    private static void Columns(List<string> lines, Random random)
    {
        var width = lines[0].Split(',').Length;
        var (column, target, way) = (random.Next(width), random.Next(width), random.Next(4));
        lines.ForEachIndex(line =>
        {
            var cells = line.Split(',').ToList();
            if (cells.Count <= Math.Max(column, target))
            {
                return line;
            }

            switch (way)
            {
                case 0:
                    cells.RemoveAt(column);
                    break;
                case 1:
                    cells.Insert(column, cells[column]);
                    break;
                case 2:
                    cells[column] = string.Empty;
                    break;
                default:
                    (cells[column], cells[target]) = (cells[target], cells[column]);
                    break;
            }

            return string.Join(',', cells);
        });
    }

    private static void ForEachIndex(this List<string> lines, Func<string, string> change)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            lines[i] = change(lines[i]);
        }
    }

    private static string LineEnd(Random random) => random.Next(10) switch
    {
        0 => "\r\n",
        1 => "\r",
        2 when random.Next(5) == 0 => "\u2028",
        _ => "\n",
    };

    private static byte[] Encode(string text, Random random) => random.Next(25) switch
    {
        0 => [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)],
        1 => [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(text)],
        2 => Encoding.Latin1.GetBytes(text + "\u00E9"),
        _ => Encoding.UTF8.GetBytes(text),
    };
}
