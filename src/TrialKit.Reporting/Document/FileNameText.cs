using System.Globalization;

namespace TrialKit.Reporting.Document;

/// <summary>Names of files made from names of the trial, which may hold anything.</summary>
internal static class FileNameText
{
    private const int Longest = 80;

    // Devices on some systems, whatever ending follows (value from memory: Microsoft, Naming files, paths and namespaces).
    private static readonly string[] Reserved =
        ["con", "prn", "aux", "nul", .. Enumerable.Range(0, 10).SelectMany(number => (string[])[string.Create(CultureInfo.InvariantCulture, $"com{number}"), string.Create(CultureInfo.InvariantCulture, $"lpt{number}")])];

    /// <summary>Letters a to z, digits, <c>-</c> and <c>_</c>, at most 80 of them, and no name that some system keeps for itself: so it names a file, on any system, in the folder it is put into.</summary>
    public static string Of(string text)
    {
        var name = string.Concat(text.Select(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' ? letter : '-'));
        name = name.Length > Longest ? name[..Longest] : name;
        return name.Length == 0 || Reserved.Contains(name, StringComparer.OrdinalIgnoreCase) ? name + "_" : name;
    }

    /// <summary>Such a name that is not taken; a later one of two that come to the same is numbered.</summary>
    public static string Unused(string text, ISet<string> taken)
    {
        var name = Of(text);
        var free = name;
        for (var number = 2; !taken.Add(free); number++)
        {
            free = string.Create(CultureInfo.InvariantCulture, $"{name}-{number}");
        }

        return free;
    }
}
