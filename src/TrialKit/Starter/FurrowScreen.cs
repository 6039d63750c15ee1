using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>Holds what is put near the seed against published limits.</summary>
/// <remarks>
/// A limit is a screening figure from its source. Exceeding one is no proof of injury, staying under one no proof of safety. An amount is compared at the precision
/// of the limit as printed, as its sources do: Kansas State University has 8.04 lb meet a limit of 8.
/// </remarks>
public static class FurrowScreen
{
    // Row spacings are printed in whole inches: 75 cm and 76 cm rows are 30 inch rows.
    private const double SameRow = 0.5;

    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Screen of amounts near the seed",
        "Limits of Kansas State University, Ohio State University, Tri-State recommendations and a soil laboratory's guide, each named beside its figure",
        "docs/methods/starter.md");

    /// <summary>One line for each source.</summary>
    /// <param name="total">What lies at the placement.</param>
    /// <param name="site">Crop, rows and soil.</param>
    public static ImmutableArray<ScreenLine> Of(PlacementTotal total, StarterSite site)
    {
        ArgumentNullException.ThrowIfNull(total);
        ArgumentNullException.ThrowIfNull(site);
        return [.. LimitSources.All.Select(source => Line(source, total, site))];
    }

    private static ScreenLine Line(LimitSource source, PlacementTotal total, StarterSite site)
    {
        var (limits, reason) = Covering(source, total.Placement, site);
        if (limits.Length == 0)
        {
            return new(total.Placement, source, Limit: null, PoundsPerAcre: null, ScreenVerdict.NotCovered, reason);
        }

        if (limits.FirstOrDefault(candidate => LimitSoils.Holds(candidate.Soil, site.Soil, site.CationExchange) is null) is { } asked)
        {
            return new(total.Placement, source, Limit: null, PoundsPerAcre: null, ScreenVerdict.SoilNotKnown, LimitSoils.Question(asked.Soil));
        }

        var limit = limits.First(candidate => LimitSoils.Holds(candidate.Soil, site.Soil, site.CationExchange) == true);
        if (SummedNutrientsWords.PoundsPerAcre(limit.Sum, total) is not { } amount)
        {
            return new(total.Placement, source, limit, PoundsPerAcre: null, ScreenVerdict.AmountNotKnown, "a product there has no analysis, or no density to weigh it");
        }

        var verdict = Verdict(limit, amount);
        if (verdict == ScreenVerdict.Over)
        {
            return new(total.Placement, source, limit, amount, verdict, reason);
        }

        // No amount of a material that is never to be in the furrow is told as within a limit there.
        var never = total.Placement == Placement.InFurrow
            ? total.Products.SelectMany(placed => FurrowHazards.In(placed.Product)).FirstOrDefault(hazard => hazard.IsNever)
            : null;
        return never is null
            ? new(total.Placement, source, limit, amount, verdict, reason)
            : new(total.Placement, source, Limit: null, PoundsPerAcre: null, ScreenVerdict.NotCovered, $"holds {never.What}, never to be in the furrow");
    }

    private static ScreenVerdict Verdict(ScreeningLimit limit, double amount) =>
        limit.PoundsPerAcre == 0 || limit.AsPrinted(amount) > limit.PoundsPerAcre ? ScreenVerdict.Over
        : limit.AsPrinted(amount) == limit.PoundsPerAcre ? ScreenVerdict.AtLimit
        : ScreenVerdict.Under;

    /// <summary>The source's limits for the crop, the distance and the rows, one for each soil; none with the reason.</summary>
    private static (ScreeningLimit[] Limits, string Reason) Covering(LimitSource source, Placement placement, StarterSite site)
    {
        var crops = source.Limits.Where(limit => limit.Crop is null || Identifier.Same(limit.Crop, site.Crop)).ToArray();
        if (crops.Length == 0)
        {
            return ([], $"no limit for {site.Crop}");
        }

        var distances = SeedDistances.Of(placement).ToArray();
        var placed = crops.Where(limit => distances.Contains(limit.Distance)).ToArray();
        if (placed.Length == 0)
        {
            return ([], "no limit for this placement");
        }

        if (placed[0].RowInches is null)
        {
            return (placed, placed[0].PoundsPerAcre == 0 ? $"none with {site.Crop}" : "row spacing not stated");
        }

        // Between printed spacings the next wider row's limit is taken, the stricter one: a wider row gathers more of a rate along its length.
        var inches = site.RowSpacing.Inches;
        var row = placed.Select(limit => limit.RowInches!.Value).Where(printed => printed >= inches - SameRow).DefaultIfEmpty(double.NaN).Min();
        return double.IsNaN(row)
            ? ([], "no limit for rows this wide")
            : ([.. placed.Where(limit => limit.RowInches == row)], string.Create(CultureInfo.InvariantCulture, $"{(row - inches <= SameRow ? "" : "not printed for these rows; the next wider, ")}{row:0} in rows"));
    }
}
