using System.Text;

namespace TrialKit.Fuzz.Mutation;

/// <summary>Changes tokens: one for another of the file, for an awkward one, for none, for several.</summary>
internal static class TokenDamage
{
    private const int LongestRun = 2000;

    /// <summary>The text with a few damages.</summary>
    public static byte[] Apply(byte[] sound, Random random)
    {
        var tokens = Token.Split(Encoding.UTF8.GetString(sound));
        for (var damages = Damages.Few(random); damages > 0 && tokens.Count > 0; damages--)
        {
            Once(tokens, random);
        }

        return Encoding.UTF8.GetBytes(string.Concat(tokens));
    }

    private static void Once(List<string> tokens, Random random)
    {
        var at = random.Next(tokens.Count);
        switch (random.Next(10))
        {
            case 0:
                tokens[at] = tokens[random.Next(tokens.Count)];
                break;
            case 1:
                tokens[at] = string.Empty;
                break;
            case 2:
                tokens.Insert(at, Awkward(random));
                break;
            case 3:
                var other = random.Next(tokens.Count);
                (tokens[at], tokens[other]) = (tokens[other], tokens[at]);
                break;
            case 4 when random.Next(10) == 0:
                tokens[at] = string.Concat(Enumerable.Repeat(tokens[at], 1 + random.Next(LongestRun)));
                break;
            case 5 when IsNumber(tokens[at]):
                tokens[at] = Near(tokens[at], random);
                break;
            default:
                // A token that means something is damaged in preference to a space between two.
                for (var tries = 0; tries < 5 && tokens[at].Length > 0 && !char.IsLetterOrDigit(tokens[at][^1]); tries++)
                {
                    at = random.Next(tokens.Count);
                }

                tokens[at] = Awkward(random);
                break;
        }
    }

    private static string Awkward(Random random) => Token.Awkward[random.Next(Token.Awkward.Length)];

    private static bool IsNumber(string token) => token.Length > 0 && char.IsAsciiDigit(token[^1]);

    // A number that stays a number mostly keeps the trial sound, so that what follows the reading is tried as well.
    private static string Near(string token, Random random) => random.Next(4) switch
    {
        0 => token + random.Next(10).ToString(System.Globalization.CultureInfo.InvariantCulture),
        1 => "-" + token,
        2 => token.Length > 1 ? token[1..] : "0",
        _ => string.Concat(token.Select(character => char.IsAsciiDigit(character) ? (char)('0' + random.Next(10)) : character)),
    };
}
