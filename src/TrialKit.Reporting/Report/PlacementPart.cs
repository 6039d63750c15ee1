using TrialKit.Reporting.Document;
using TrialKit.Stand;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Report;

/// <summary>Where the seed was put: spacing in the row with its limits, skips and doubles with their places, and depth.</summary>
internal static class PlacementPart
{
    private const int MostPlaces = 12;

    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        var (spacings, depths) = (analysis.Strips.Spacings, analysis.Strips.Depths);
        if (spacings.IsEmpty && depths.IsEmpty)
        {
            yield break;
        }

        var us = analysis.Trial.Units == UnitSystem.Us;
        yield return new Heading(2, "Spacing and depth of seed");
        if (!spacings.IsEmpty)
        {
            yield return Spacing(spacings, us);
            if (Places(spacings, us) is { } places)
            {
                yield return places;
            }

            if (Identifier.Same(analysis.Trial.Crop.Name, "corn"))
            {
                yield return EvennessPart.Published("Published on plant spacing and yield, elsewhere", SpacingOpinions.Published, "The sources disagree; spacing is not turned into bushels here.");
            }
        }

        if (!depths.IsEmpty)
        {
            yield return Depth(depths, us);
        }
    }

    private static Table Spacing(IReadOnlyList<StripSpacing> strips, bool us) => new(
        "In-row spacing",
        [
            new("Strip"),
            new("Treatment"),
            new("Gaps", Alignment: ColumnAlignment.Right),
            new("SD", Symbol(us), ColumnAlignment.Right),
            new("Floor", Symbol(us), ColumnAlignment.Right),
            new("CV", "%", ColumnAlignment.Right),
            new("Precision", "%", ColumnAlignment.Right),
            new("Doubles", "%", ColumnAlignment.Right),
            new("Single", "%", ColumnAlignment.Right),
            new("Skips", "%", ColumnAlignment.Right),
            new("By place", "%", ColumnAlignment.Right),
        ],
        [.. strips.Select(strip => TableRow.Of(
            strip.Strip.Name,
            strip.Strip.Treatment.Label,
            NumberText.Count(strip.Gaps),
            Short(strip.StandardDeviation, us),
            Short(strip.Floor, us),
            NumberText.Number(strip.CoefficientOfVariation, 0),
            NumberText.Number(strip.Precision, 1),
            NumberText.Number(strip.Classes?.Multiples, 1),
            NumberText.Number(strip.Classes?.Singles, 1),
            NumberText.Number(strip.Classes?.Missed, 1),
            strip.Classes is { } classes ? $"{NumberText.Number(classes.MultiplesByPlace, 1)}\u00A0/\u00A0{NumberText.Number(classes.SinglesByPlace, 1)}\u00A0/\u00A0{NumberText.Number(classes.MissedByPlace, 1)}" : NumberText.Dash))],
        "Floor: the SD of a perfect drop of which as many seeds came up as stand here; no planter can do better. Precision is best at 0 and cannot exceed 29 %. Shares are of gaps; by place gives doubles, singles and skips over the places that the gaps span.");

    // The worst of each kind: a report is no list of a thousand gaps, and the written tables have every one.
    private static Table? Places(IReadOnlyList<StripSpacing> strips, bool us)
    {
        var odd = strips.SelectMany(strip => strip.Odd.Select(place => (strip.Strip, Odd: place))).ToArray();
        var worst = odd.Where(place => place.Odd.Kind == SpacingKind.Missed).OrderByDescending(place => place.Odd.SeedSpacings).Take(MostPlaces)
            .Concat(odd.Where(place => place.Odd.Kind == SpacingKind.Multiple).OrderBy(place => place.Odd.SeedSpacings).Take(MostPlaces))
            .ToArray();
        return odd.Length == 0
            ? null
            : new(
                worst.Length < odd.Length ? $"The {NumberText.Count(worst.Length)} widest skips and tightest doubles of {NumberText.Count(odd.Length)}" : "Skips and doubles",
                [
                    new("Strip"),
                    new("Spot"),
                    new("Kind"),
                    new("Between plants"),
                    new("From", Symbol(us), ColumnAlignment.Right),
                    new("Gap", Symbol(us), ColumnAlignment.Right),
                    new("Seed spacings", Alignment: ColumnAlignment.Right),
                ],
                [.. worst.Select(place => TableRow.Of(
                    place.Strip.Name,
                    place.Odd.Spot,
                    place.Odd.Kind == SpacingKind.Multiple ? "double" : "skip",
                    $"{place.Odd.Before.Name} and {place.Odd.After.Name}",
                    Short(place.Odd.Before.Position, us),
                    Short(place.Odd.Gap, us),
                    NumberText.Number(place.Odd.SeedSpacings, 1)))],
                worst.Length < odd.Length ? "Every one stands in the written tables." : null);
    }

    private static Table Depth(IEnumerable<StripDepth> strips, bool us) => new(
        "Seed depth",
        [
            new("Strip"),
            new("Treatment"),
            new("Plants", Alignment: ColumnAlignment.Right),
            new("Mean", Symbol(us), ColumnAlignment.Right),
            new("SD", Symbol(us), ColumnAlignment.Right),
            new("CV", "%", ColumnAlignment.Right),
            new("Less target", Symbol(us), ColumnAlignment.Right),
            new("Near target", "%", ColumnAlignment.Right),
        ],
        [.. strips.Select(strip => TableRow.Of(
            strip.Strip.Name,
            strip.Strip.Treatment.Label,
            NumberText.Count(strip.Plants),
            Short(strip.Mean, us),
            Short(strip.StandardDeviation, us),
            NumberText.Number(strip.CoefficientOfVariation, 0),
            strip.Bias is { } bias ? NumberText.Difference(us ? bias.Inches : bias.Centimeters, us ? 2 : 1) : NumberText.Dash,
            NumberText.Number(strip.PercentNearTarget, 0)))],
        "Near: within a quarter inch of the target, which is common practice. Extension guidance for corn is 1.5 to 2.5 in, never under 1.5 in.");

    private static string Symbol(bool us) => us ? "in" : "cm";

    private static string Short(Length? length, bool us) => NumberText.Number(us ? length?.Inches : length?.Centimeters, us ? 2 : 1);
}
