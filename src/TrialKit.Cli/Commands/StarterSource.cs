using TrialKit.Cli.Output;
using TrialKit.Reporting.Report;
using TrialKit.Starter;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Cli.Commands;

/// <summary>What <c>trialkit starter</c> works on: a trial, or one product.</summary>
/// <param name="Title">What it is about.</param>
/// <param name="Review">What is put where.</param>
/// <param name="Speed">Speed of the planter; null when not given.</param>
/// <param name="Rows">Rows of the strips, when all have as many; null otherwise.</param>
/// <param name="Units">The units printed.</param>
/// <param name="Inputs">The files read.</param>
internal sealed record StarterSource(string Title, StarterReview Review, Speed? Speed, int? Rows, UnitSystem Units, IReadOnlyList<ReportInput> Inputs)
{
    /// <summary>The source that the command line names; null when the trial has errors, which were printed.</summary>
    /// <exception cref="UsageException">Something needed was not given.</exception>
    public static StarterSource? Of(StarterRequest request, Terminal terminal) => request.Folder is { } folder ? OfTrial(folder, request, terminal) : OfProduct(request);

    private static StarterSource? OfTrial(string folder, StarterRequest request, Terminal terminal)
    {
        var reading = TrialFolder.Read(folder, terminal, eachWarning: false);
        if (reading.Trial is not { } trial)
        {
            return null;
        }

        var site = StarterSite.Of(trial);
        var review = StarterReview.Of(trial.Treatments, site with { Soil = request.Soil ?? site.Soil, CationExchange = request.CationExchange ?? site.CationExchange })
            ?? throw new UsageException($"no treatment of '{folder}' has a [[treatment.product]]; one was expected, or the options of one product without a folder.");
        int?[] rows = [.. trial.Strips.Select(strip => strip.Rows).Distinct()];
        return new(
            trial.Title,
            review,
            request.Speed ?? trial.Planting.Speed,
            rows.Length == 1 ? rows[0] : null,
            request.Units ?? trial.Units,
            TrialFolder.Inputs(reading));
    }

    private static StarterSource OfProduct(StarterRequest request)
    {
        var rate = request.Rate ?? throw Missing("--rate \"5 gal/ac\"");
        var spacing = request.RowSpacing ?? throw Missing("--row-spacing \"30 in\"");
        var crop = request.Crop ?? throw Missing("--crop corn");
        if (request.Placements.IsEmpty)
        {
            throw Missing("--placement in-furrow");
        }

        var name = request.Name ?? request.Analysis?.ToString() ?? "starter";
        var product = new Product(name, request.Placements, rate, request.Density, request.Analysis);
        if (rate.IsVolume && request.Analysis is not null && request.Density is null)
        {
            var usual = Materials.Recognise(product)?.DensityWords is { } words ? $"; {words}" : "";
            throw new UsageException($"the rate is a volume and there is no --density; the weight of a volume was expected, such as --density \"11.65 lb/gal\"{usual}.");
        }

        var treatment = new Treatment(name, name, Cost: null, [product]);
        var review = StarterReview.Of([treatment], new StarterSite(crop, spacing, request.Soil, request.CationExchange))!;
        return new(name, review, request.Speed, Rows: null, request.Units ?? UnitSystem.Us, []);
    }

    private static UsageException Missing(string example) => new($"without a trial folder this is needed: {example}.");
}
