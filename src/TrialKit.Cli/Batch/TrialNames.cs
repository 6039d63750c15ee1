using System.Globalization;
using System.Text;

namespace TrialKit.Cli.Batch;

/// <summary>Names of trials for outputs: fit for a file on any system, and no two alike whatever the case of letters.</summary>
internal static class TrialNames
{
    private const int Longest = 80;
    private static readonly HashSet<string> Reserved = new(
        ["CON", "PRN", "AUX", "NUL", .. Enumerable.Range(1, 9).SelectMany(n => (string[])[$"COM{n}", $"LPT{n}"])],
        StringComparer.OrdinalIgnoreCase);

    /// <summary>One name per folder: its own, with its parent's before it where two have the same, and a number where that does not help.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<string> folders)
    {
        string[] full = [.. folders.Select(folder => Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)))];
        string[] own = [.. full.Select(folder => Safe(Path.GetFileName(folder)))];
        var shared = own.CountBy(name => name, StringComparer.OrdinalIgnoreCase).Where(name => name.Value > 1).Select(name => name.Key).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var taken = new HashSet<string>(own.Where(name => !shared.Contains(name)), StringComparer.OrdinalIgnoreCase);
        return [.. own.Select((name, index) => shared.Contains(name) ? Free(Safe($"{Path.GetFileName(Path.GetDirectoryName(full[index]))}-{name}"), taken) : name)];
    }

    /// <summary>A name with nothing in it that a file's name cannot have or a shell would take for its own.</summary>
    public static string Safe(string? name)
    {
        var safe = new StringBuilder();
        foreach (var rune in (name ?? "").Normalize(NormalizationForm.FormC).EnumerateRunes())
        {
            safe.Append(Rune.IsLetterOrDigit(rune) || rune.Value is '-' or '_' or '.' ? rune.ToString() : "-");
        }

        var cut = safe.ToString().Trim('.', '-');
        cut = cut.Length > Longest ? cut[..(char.IsHighSurrogate(cut[Longest - 1]) ? Longest - 1 : Longest)].Trim('.', '-') : cut;
        return cut.Length == 0 ? "trial" : Reserved.Contains(Path.GetFileNameWithoutExtension(cut)) ? cut + "-trial" : cut;
    }

    private static string Free(string name, HashSet<string> taken)
    {
        var free = name;
        for (var number = 2; !taken.Add(free); number++)
        {
            free = string.Create(CultureInfo.InvariantCulture, $"{name}-{number}");
        }

        return free;
    }
}
