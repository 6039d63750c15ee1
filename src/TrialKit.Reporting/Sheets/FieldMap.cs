using System.Globalization;
using TrialKit.Planning;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Words;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Sheets;

/// <summary>The map of a plan: a figure, and a page with it.</summary>
public static class FieldMap
{
    /// <summary>The strips seen from above.</summary>
    /// <param name="trial">The trial that was planned.</param>
    /// <param name="plan">Its plan.</param>
    public static IFigure Figure(StripTrial trial, TrialPlan plan)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(plan);
        var tones = TreatmentTones.Of(trial);
        return new FieldMapFigure(
            [.. plan.Strips.Select(strip => new MapStrip(strip.Strip.Name, strip.Strip.Treatment.Label, tones[strip.Strip.Treatment], Number(strip.Left), Number(strip.Left + strip.Width)))],
            [.. plan.Spots.Select(spot => (Number(spot.Across), Number(spot.Spot.FromStart)))],
            [.. plan.Tramlines.Select(track => (Number(track.Left), Number(track.Right)))],
            Number(plan.Width),
            Number(plan.Length),
            trial.Units == UnitSystem.Us ? "ft" : "m",
            $"Map of {plan.Strips.Length.ToString(CultureInfo.InvariantCulture)} strips across the field from the corner: {string.Join(", ", plan.Strips.Select(strip => $"{strip.Strip.Name} {strip.Strip.Treatment.Label}"))}.");

        double Number(Length length) => trial.Units == UnitSystem.Us ? length.Feet : length.Meters;
    }

    /// <summary>The page to print and take along.</summary>
    /// <param name="trial">The trial that was planned.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="pageSize">The paper.</param>
    /// <param name="inputs">The files the plan was made from, with the mark of their content.</param>
    public static ReportDocument Page(StripTrial trial, TrialPlan plan, PageSize pageSize, IReadOnlyList<ReportInput> inputs)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(plan);
        var seed = plan.Seed.ToString(CultureInfo.InvariantCulture);
        return new(
            trial.Title,
            $"Map of the plan: {trial.Title}",
            "en-US",
            pageSize,
            new ReportFooter($"TrialKit {Library.Version}", Fingerprint.Of(inputs)),
            [
                new Heading(1, trial.Title),
                new KeyFacts(
                [
                    new("Layout", $"{NumberText.Count(plan.Strips.Select(strip => strip.Strip.Block).Distinct(Identifier.Comparer).Count())} {TrialWords.Replicates(trial)}"),
                    new("Strips", $"{NumberText.Count(plan.Strips.Length)} of {LengthText.Distance(plan.Length, trial.Units)} by {LengthText.Distance(plan.Strips[0].Width, trial.Units)}"),
                    new("Seed", seed),
                ]),
                new FigureBlock(Figure(trial, plan), Note: "Strips are counted from the corner at the lower left. The scales along and across differ."),
                .. plan.Findings.Select(finding => new Note(NoteWeight.Doubt, finding.Id == "few-replicates" ? "Few replicates" : "Sprayer tracks", finding.Message)),
                new PageBreak(),
                new Heading(2, "Strips in the order across the field"),
                new Table(
                    Caption: null,
                    [new("Strip"), new("Block"), new("Treatment"), new("Planter"), new("Left edge"), .. Spots(plan).Select(spot => new TableColumn($"Spot {spot}"))],
                    [.. plan.Strips.Select(strip => TableRow.Of([strip.Strip.Name, strip.Strip.Block, strip.Strip.Treatment.Label, strip.Strip.Note ?? string.Empty, LengthText.Distance(strip.Left, trial.Units), .. Places(trial, plan, strip)]))],
                    $"Spots: distance from the near end, and the row of the planter{(plan.Field.PassesPerStrip > 1 ? " in the pass named" : string.Empty)}. Drawn by lot with seed {seed}; the same seed gives the same plan."),
            ]);
    }

    private static IEnumerable<string> Spots(TrialPlan plan) => plan.Spots.Select(place => place.Spot.Name).Distinct(StringComparer.Ordinal);

    private static IEnumerable<string> Places(StripTrial trial, TrialPlan plan, PlannedStrip strip) =>
        from place in plan.Spots
        where ReferenceEquals(place.Spot.Strip, strip.Strip)
        select $"{LengthText.Distance(place.Spot.FromStart, trial.Units)}, {(plan.Field.PassesPerStrip > 1 ? $"pass {NumberText.Count(place.Spot.Pass!.Value)}, " : string.Empty)}row {NumberText.Count(place.Spot.PlanterRow!.Value)}";
}
