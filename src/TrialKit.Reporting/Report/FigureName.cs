using TrialKit.Comparison;

namespace TrialKit.Reporting.Report;

/// <summary>The name of a figure's file.</summary>
internal static class FigureName
{
    /// <summary>The name of a figure about two treatments.</summary>
    /// <param name="what">What it shows, in letters and hyphens.</param>
    /// <param name="pair">The treatments.</param>
    public static string Of(string what, ComparedPair pair) => $"{what}-{Plain(pair.Treatment.Name)}-{Plain(pair.Baseline.Name)}";

    // Names may hold anything; a file's name holds letters and digits.
    private static string Plain(string name) => string.Concat(name.Trim().ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-'));
}
