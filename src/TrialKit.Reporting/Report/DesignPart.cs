using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>What was laid out where, and what was left out and why.</summary>
internal static class DesignPart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis, TreatmentTones tones)
    {
        var trial = analysis.Trial;
        yield return new Heading(2, "Design");
        yield return new Table("The trial", [new("What"), new("As recorded")], [.. Facts(trial).Select(fact => TableRow.Of(fact.Name, fact.Value))]);
        yield return Map(trial, tones);
        var leftOut = trial.Strips.Where(strip => !strip.IsAnalysed).ToArray();
        if (leftOut.Length > 0)
        {
            yield return new Table(
                "Strips left out of every comparison",
                [new("Strip"), new("Block"), new("Treatment"), new("Reason")],
                [.. leftOut.Select(strip => TableRow.Of(strip.Name, strip.Block, strip.Treatment.Label, strip.LeftOut!))]);
        }
    }

    private static IEnumerable<KeyFact> Facts(StripTrial trial)
    {
        foreach (var fact in TrialFacts.Of(trial))
        {
            yield return fact;
        }

        yield return new("Control", trial.Design.Control?.Label ?? "none named; all treatments are compared with each other");
        var us = trial.Units == Quantities.UnitSystem.Us;
        var spacing = trial.Planting.RowSpacing;
        yield return new("Row spacing", us ? $"{NumberText.Number(spacing.Inches, 1)}\u00A0in" : $"{NumberText.Number(spacing.Centimeters, 1)}\u00A0cm");
        if (trial.Planting.Seeds is { } seeds)
        {
            yield return new("Seeds dropped", us ? $"{NumberText.Stand(seeds.PerAcre)} an acre" : $"{NumberText.Stand(seeds.PerHectare)} a hectare");
        }

        if (trial.Planting.Depth is { } depth)
        {
            yield return new("Depth aimed at", us ? $"{NumberText.Number(depth.Inches, 2)}\u00A0in" : $"{NumberText.Number(depth.Centimeters, 1)}\u00A0cm");
        }

        if (trial.Planting.Germination is { } germination)
        {
            yield return new("Germination of the seed tag", NumberText.Percent(germination.DecimalFractions));
        }

        foreach (var (name, value) in new[] { ("Field", trial.Site?.Name), ("Soil", trial.Site?.Soil), ("Tillage", trial.Site?.Tillage), ("Crop before", trial.Site?.PreviousCrop) })
        {
            if (!string.IsNullOrWhiteSpace(value))
            {
                yield return new(name, value);
            }
        }
    }

    private static FigureBlock Map(StripTrial trial, TreatmentTones tones)
    {
        var inOrder = trial.Strips.All(strip => strip.Order is not null);
        var treatments = TreatmentTones.Ordered(trial).ToList();
        var cells = trial.Strips
            .OrderBy(strip => inOrder ? strip.Order : 0)
            .Select(strip => new MapCell(strip.Name, strip.Block, treatments.FindIndex(treatment => Identifier.Same(treatment.Name, strip.Treatment.Name)), strip.IsAnalysed))
            .ToArray();
        var order = inOrder ? "in field order" : "in the order of the record";
        var words = $"{TrialWords.Layout(trial)}, {order}: {string.Join(", ", cells.Select(cell => $"{cell.Name} {treatments[cell.Treatment].Label}{(cell.IsAnalysed ? "" : " (left out)")}"))}.";
        return new(
            new DesignMapFigure(cells, [.. treatments.Select(treatment => new MapKey(treatment.Label, tones[treatment]))], words),
            $"The strips side by side, {order}",
            Note: trial.Strips.All(strip => strip.IsAnalysed) ? null : "A strip crossed out was left out of every comparison.")
        {
            Name = "design-map",
        };
    }
}
