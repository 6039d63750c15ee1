using System.Collections.Immutable;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>What every treatment puts near the seed: amounts, screen, ranking by salt, and what to doubt.</summary>
/// <param name="Site">Crop, rows and soil.</param>
/// <param name="Treatments">The treatments that put something near the seed.</param>
/// <param name="Salts">Products and mixtures, the highest index first, those without one last.</param>
/// <param name="Findings">What to doubt.</param>
public sealed record StarterReview(StarterSite Site, ImmutableArray<TreatmentStarter> Treatments, ImmutableArray<RankedSalt> Salts, ImmutableArray<Finding> Findings)
{
    /// <summary>The procedures behind it.</summary>
    public static ImmutableArray<Method> Methods { get; } = [FurrowScreen.Method, SaltIndexes.Method];

    /// <summary>Every stream of a liquid, with its treatment.</summary>
    public IEnumerable<(Treatment Treatment, PlacedProduct Placed)> Liquids =>
        from treatment in Treatments
        from placement in treatment.Placements
        from placed in placement.Products
        where placed.Rate.IsVolume
        select (treatment.Treatment, placed);

    /// <summary>The review of a trial; null when no treatment has a product.</summary>
    public static StarterReview? Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return Of(trial.Treatments, StarterSite.Of(trial));
    }

    /// <summary>The review of treatments at a site; null when none has a product.</summary>
    public static StarterReview? Of(IEnumerable<Treatment> treatments, StarterSite site)
    {
        ArgumentNullException.ThrowIfNull(treatments);
        ArgumentNullException.ThrowIfNull(site);
        ImmutableArray<TreatmentStarter> reviewed = [.. treatments.Where(treatment => !treatment.Products.IsEmpty).Select(treatment => Review(treatment, site))];
        return reviewed.IsEmpty ? null : new(site, reviewed, Rank(reviewed), [.. StarterFindings.Of(reviewed)]);
    }

    private static TreatmentStarter Review(Treatment treatment, StarterSite site)
    {
        var placements = PlacementTotal.Of(treatment.Products, site.RowSpacing);
        var furrow = placements.Where(total => total.Placement == Placement.InFurrow).SelectMany(total => total.Products);
        return new(
            treatment,
            placements,
            [.. placements.SelectMany(total => FurrowScreen.Of(total, site))],
            [.. furrow.SelectMany(placed => FurrowHazards.In(placed.Product).Select(hazard => (placed.Product, hazard)))]);
    }

    private static ImmutableArray<RankedSalt> Rank(ImmutableArray<TreatmentStarter> treatments)
    {
        var products = treatments.SelectMany(treatment => treatment.Treatment.Products)
            .DistinctBy(product => (product.Name, SaltIndexes.Of(product)))
            .Select(product => new RankedSalt(product.Name, SaltIndexes.Of(product), IsFromMemory([product]), SaltIndexes.Missing(product)));
        var mixtures =
            from treatment in treatments
            from total in treatment.Placements
            where total.Products.Length > 1
            select new RankedSalt(
                $"{treatment.Treatment.Label}, {Placements.NameOf(total.Placement)}: {string.Join(" with ", total.Products.Select(placed => placed.Product.Name))}",
                SaltIndexes.Of(total),
                IsFromMemory(total.Products.Select(placed => placed.Product)),
                SaltIndexes.Of(total) is null ? "a product of it has no value or no weight" : null);
        return [.. products.Concat(mixtures).OrderByDescending(ranked => ranked.Index ?? -1)];
    }

    private static bool IsFromMemory(IEnumerable<Product> products) => products
        .SelectMany(product => product.MadeFrom.IsEmpty ? [Materials.Recognise(product)?.Name] : product.MadeFrom.Select(part => (string?)part.Material))
        .OfType<string>()
        .Any(material => SaltIndexes.Find(material)?.IsFromMemory == true);
}
