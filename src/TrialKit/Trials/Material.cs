using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>A fertilizer material that starters are, or are mixed from.</summary>
/// <param name="Name">Its name in files and reports.</param>
/// <param name="OtherNames">What it is called too.</param>
/// <param name="Analysis">Its usual analysis.</param>
/// <param name="Density">Its usual weight per volume, which the label overrides; null for a dry material.</param>
/// <param name="DensityNote">Other densities that are printed, or that the value is from memory; null when there is nothing to say.</param>
public sealed record Material(string Name, ImmutableArray<string> OtherNames, NutrientAnalysis Analysis, Density? Density, string? DensityNote)
{
    /// <summary>Its usual weight per volume in words, for one who has the label still to look up; null when none is on record.</summary>
    public string? DensityWords => Density is { } density
        ? string.Create(CultureInfo.InvariantCulture, $"{LiquidDensity.PoundsPerGallon(density):0.##} lb/gal is usual for {Name}{(DensityNote is { } note ? $" ({note})" : "")}, and the label overrides it")
        : null;
}
