using System.Collections.Immutable;
using System.Text.RegularExpressions;
using TrialKit.Quantities;

namespace TrialKit.Trials;

/// <summary>The materials that limits and salt indices speak of.</summary>
/// <remarks>Analyses are the usual ones of the trade; densities as printed in extension tables (pounds per U.S. gallon). A product's own label overrides both.</remarks>
public static partial class Materials
{
    /// <summary>Every material.</summary>
    public static ImmutableArray<Material> All { get; } =
    [
        Dry("ammonium nitrate", "34-0-0"),
        Dry("ammonium sulfate", "21-0-0-24S", "AMS"),
        Dry("urea", "46-0-0"),
        Liquid("UAN-28", "28-0-0", 10.66, "10.65 to 10.67 at 60 F", "UAN 28", "UAN28", "28 % UAN", "urea ammonium nitrate", "UAN"),
        Liquid("UAN-32", "32-0-0", 11.06, null, "UAN 32", "UAN32", "32 % UAN", "urea ammonium nitrate", "UAN"),
        Dry("anhydrous ammonia", "82-0-0", "NH3"),
        Liquid("ammonium thiosulfate", "12-0-0-26S", 11.04, "11.5 is printed too", "ammonium thiosulphate", "ATS", "12-0-0-26"),
        Liquid("potassium thiosulfate", "0-0-25-17S", 12.2, "value from memory", "potassium thiosulphate", "KTS", "0-0-25-17"),
        Liquid("10-34-0", "10-34-0", 11.65, "11.4 is printed too", "ammonium polyphosphate", "APP"),
        Liquid("11-37-0", "11-37-0", 11.6, null, "ammonium polyphosphate", "APP"),
        Liquid("7-21-7", "7-21-7", 11.0, "up to 11.2 is printed"),
        Liquid("4-10-10", "4-10-10", 10.3, null),
        Liquid("9-18-9", "9-18-9", 11.1, "value from memory"),
        Liquid("6-24-6", "6-24-6", 11.1, "value from memory"),
        new("3-18-18", [], Analysis("3-18-18"), Density: null, "no density on record"),
        Dry("diammonium phosphate", "18-46-0", "DAP", "18-46-0"),
        Dry("monoammonium phosphate", "11-52-0", "MAP", "11-52-0"),
        Dry("triple superphosphate", "0-45-0", "TSP"),
        Dry("monopotassium phosphate", "0-52-34", "MKP"),
        Dry("potassium chloride", "0-0-60", "KCl", "muriate of potash"),
        Dry("potassium nitrate", "13-0-44", "KNO3"),
        Dry("potassium sulfate", "0-0-50-17S", "K2SO4", "sulfate of potash"),
    ];

    /// <summary>The material of that name, without regard to case; null when there is none, and when several share it.</summary>
    public static Material? Find(string name) =>
        All.Where(material => Identifier.Same(material.Name, name) || material.OtherNames.Contains(name, Identifier.Comparer)).ToArray() is [var only] ? only : null;

    /// <summary>The material that a product is: the one its name or analysis tells; null when none is told, or several, or one whose N, P2O5 and K2O are not the product's.</summary>
    public static Material? Recognise(Product product)
    {
        ArgumentNullException.ThrowIfNull(product);
        return RecogniseAll(product) is [var only] && (product.Analysis is not { } analysis || IsGrade(only, analysis)) ? only : null;
    }

    /// <summary>Every material that a product's name tells, the longest names first; else the one of its analysis; empty when neither tells.</summary>
    /// <remarks>
    /// A name within a longer one is not told again: urea ammonium nitrate is neither urea nor ammonium nitrate. Of materials that share a name,
    /// those of the product's N, P2O5 and K2O; all of them when none is.
    /// </remarks>
    public static ImmutableArray<Material> RecogniseAll(Product product)
    {
        ArgumentNullException.ThrowIfNull(product);
        var words = Words(product.Name);
        var told = ImmutableArray.CreateBuilder<Material>();
        foreach (var (materials, name) in Names)
        {
            if (words.Contains(name, StringComparison.Ordinal))
            {
                words = words.Replace(name, " | ", StringComparison.Ordinal);
                Material[] meant = product.Analysis is { } analysis && materials.Any(material => IsGrade(material, analysis)) ? [.. materials.Where(material => IsGrade(material, analysis))] : materials;
                told.AddRange(meant.Except(told));
            }
        }

        return told.Count > 0 ? told.ToImmutable() : [.. All.Where(material => material.Analysis == product.Analysis).Take(1)];
    }

    private static ImmutableArray<(Material[] Materials, string Name)> Names { get; } =
    [
        .. All.SelectMany(material => material.OtherNames.Add(material.Name).Select(name => (Material: material, Name: Words(name))))
            .GroupBy(entry => entry.Name, entry => entry.Material, StringComparer.Ordinal)
            .Select(name => (name.Distinct().ToArray(), name.Key))
            .OrderByDescending(entry => entry.Key.Length),
    ];

    private static bool IsGrade(Material material, NutrientAnalysis analysis) =>
        (material.Analysis.N, material.Analysis.P2O5, material.Analysis.K2O) == (analysis.N, analysis.P2O5, analysis.K2O);

    // Words are set between spaces, so that only whole ones are found: the material urea is not within a name such as ureaform.
    // A hyphen beside a letter sets words apart too, as in UAN-30; one between figures belongs to a grade.
    private static string Words(string text) =>
        $" {string.Join(' ', LetterHyphen().Replace(text.ToUpperInvariant(), " ").Split([' ', ',', ';', '(', ')', '/', '%', '+', '&'], StringSplitOptions.RemoveEmptyEntries))} ";

    [GeneratedRegex(@"(?<=\p{L})-|-(?=\p{L})", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex LetterHyphen();

    private static Material Dry(string name, string analysis, params ImmutableArray<string> others) => new(name, others, Analysis(analysis), Density: null, DensityNote: null);

    private static Material Liquid(string name, string analysis, double poundsPerGallon, string? note, params ImmutableArray<string> others) =>
        new(name, others, Analysis(analysis), LiquidDensity.FromPoundsPerGallon(poundsPerGallon), note);

    private static NutrientAnalysis Analysis(string text) =>
        NutrientAnalysis.TryParse(text, out var analysis) ? analysis : throw new ArgumentException($"'{text}' is no analysis; one such as 10-34-0 was expected.", nameof(text));
}
