using System.Collections.Immutable;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using TrialKit.Trials;

namespace TrialKit.Export;

/// <summary>What is put near the seed, as tables in both unit systems.</summary>
public static class StarterTables
{
    /// <summary>Every table that has a row.</summary>
    /// <param name="review">What is put where.</param>
    /// <param name="flows">The flow of each liquid; may be empty.</param>
    public static ImmutableArray<ResultTable> Of(StarterReview review, ImmutableArray<StreamFlow> flows)
    {
        ArgumentNullException.ThrowIfNull(review);
        ResultTable[] tables = [Products(review), Nutrients(review), Screen(review), Hazards(review), Salts(review), Flows(flows), Catches(flows), Cautions()];
        return [.. tables.Where(table => table.Rows.Count > 0)];
    }

    /// <summary>The tables of an analysis; none when no treatment names a product.</summary>
    internal static IEnumerable<ResultTable> Of(TrialAnalysis analysis) => analysis.Starter is { } review ? Of(review, analysis.Flows) : [];

    private static IEnumerable<(TreatmentStarter Treatment, PlacementTotal Total)> Totals(StarterReview review) =>
        review.Treatments.SelectMany(treatment => treatment.Placements.Select(total => (treatment, total)));

    private static ResultTable Products(StarterReview review) => ResultTable.Of(
        "starter-products",
        "one product at one placement",
        Totals(review).SelectMany(entry => entry.Total.Products.Select(placed => (entry.Treatment.Treatment, Placed: placed))),
        ("treatment", "the treatment", row => row.Treatment.Name),
        ("placement", "where", row => Placements.NameOf(row.Placed.Placement)),
        ("product", "the product", row => row.Placed.Product.Name),
        ("share", "of the product's rate that goes there", row => row.Placed.Share),
        ("gal_per_ac", "a liquid's volume", row => row.Placed.Rate.IsVolume ? row.Placed.Rate.PerAcreUs : null),
        ("l_per_ha", "a liquid's volume", row => row.Placed.Rate.IsVolume ? row.Placed.Rate.PerHectare : null),
        ("fl_oz_per_1000ft", "a liquid's volume along the row", row => row.Placed.Row.FluidOuncesPerThousandFeet),
        ("ml_per_ft", "a liquid's volume along the row", row => row.Placed.Row.IsVolume ? row.Placed.Row.ThousandthsPerFoot : null),
        ("ml_per_m", "a liquid's volume along the row", row => row.Placed.Row.IsVolume ? row.Placed.Row.ThousandthsPerMetre : null),
        ("lb_per_ac", "weight of product", row => row.Placed.Weight?.PerAcreUs),
        ("kg_per_ha", "weight of product", row => row.Placed.Weight?.PerHectare),
        ("lb_per_1000ft", "weight of product along the row", row => row.Placed.RowWeight?.PerThousandFeetUs),
        ("g_per_m", "weight of product along the row", row => row.Placed.RowWeight?.ThousandthsPerMetre),
        ("bands_per_row", "streams or bands that share it in a row", row => Placements.OutletsPerRow(row.Placed.Placement)),
        ("caution", "stands over every line", Caution));

    private static ResultTable Nutrients(StarterReview review) => ResultTable.Of(
        "starter-nutrients",
        "one nutrient at one placement, all products there together",
        Totals(review).SelectMany(entry => (entry.Total.Nutrients ?? []).Select(amount => (entry.Treatment.Treatment, entry.Total, Amount: amount))),
        ("treatment", "the treatment", row => row.Treatment.Name),
        ("placement", "where", row => Placements.NameOf(row.Total.Placement)),
        ("nutrient", "as the analysis states it", row => row.Amount.Nutrient.ToString()),
        ("lb_per_ac", "per area", row => row.Amount.Rate.PerAcreUs),
        ("kg_per_ha", "per area", row => row.Amount.Rate.PerHectare),
        ("lb_per_1000ft", "along the row", row => row.Amount.Row.PerThousandFeetUs),
        ("g_per_m", "along the row", row => row.Amount.Row.ThousandthsPerMetre),
        ("caution", "stands over every line", Caution));

    private static ResultTable Screen(StarterReview review) => ResultTable.Of(
        "starter-screen",
        "one placement against one source's limit: a screening figure, no proof of safety or injury",
        review.Treatments.SelectMany(treatment => treatment.Screen.Select(line => (treatment.Treatment, Line: line))),
        ("treatment", "the treatment", row => row.Treatment.Name),
        ("placement", "where", row => Placements.NameOf(row.Line.Placement)),
        ("source", "whose limit", row => row.Line.Source.Name),
        ("source_title", "where it is printed", row => row.Line.Source.Title),
        ("source_note", "what the source says beside its limits", row => row.Line.Source.Note),
        ("year", "of the source; empty when the copy read does not say", row => row.Line.Source.Year),
        ("crop", "the crop the limit is for; empty when the source names none", row => row.Line.Limit?.Crop),
        ("soil", "the soil the limit is for", row => row.Line.Limit?.SoilWords),
        ("row_in", "the row spacing the limit is for, inches; empty when the source names none", row => row.Line.Limit?.RowInches),
        ("summed", "what the limit sums", row => row.Line.Limit?.SumWords),
        ("limit_lb_per_ac", "the limit; 0 means none at all", row => row.Line.Limit?.PoundsPerAcre),
        ("amount_lb_per_ac", "what lies there", row => row.Line.PoundsPerAcre),
        ("compared_lb_per_ac", "the same, rounded as the limit is printed, which is what is compared", row => row.Line.Compared),
        ("verdict", "under, at the limit, over, not covered, soil not known or amount not known", row => VerdictName(row.Line.Verdict)),
        ("reason", "why this limit, or why none", row => row.Line.Reason),
        ("from_memory", "whether the limit was not read in the source", row => row.Line.Limit?.IsFromMemory),
        ("caution", "stands over every line", Caution));

    private static ResultTable Hazards(StarterReview review) => ResultTable.Of(
        "starter-hazards",
        "something in the seed furrow that a source keeps out of it or warns of",
        review.Treatments.SelectMany(treatment => treatment.Hazards.Select(entry => (treatment.Treatment, entry.Product, entry.Hazard))),
        ("treatment", "the treatment", row => row.Treatment.Name),
        ("product", "the product", row => row.Product.Name),
        ("what", "the material or nutrient", row => row.Hazard.What),
        ("never", "whether it is never to be there", row => row.Hazard.IsNever),
        ("reason", "why", row => row.Hazard.Reason),
        ("source", "who says so", row => row.Hazard.Source),
        ("caution", "stands over every line", Caution));

    private static ResultTable Salts(StarterReview review) => ResultTable.Of(
        "starter-salt-index",
        "one product or mixture by its salt index, the highest first: a ranking, no forecast of stand loss",
        review.Salts,
        ("name", "product, or products at one placement together", row => row.Name),
        ("salt_index", "of an equal weight, sodium nitrate being 100; empty when not on record", row => row.Index),
        ("from_memory", "whether a value behind it was not read in the source", row => row.IsFromMemory),
        ("missing", "why there is no index; empty when there is one", row => row.Missing));

    private static ResultTable Flows(ImmutableArray<StreamFlow> flows) => ResultTable.Of(
        "starter-flow",
        "the flow of one liquid at one placement; where several go to one, also of all of them through the same outlets",
        flows,
        ("treatment", "the treatment", row => row.Treatment.Name),
        ("placement", "where", row => Placements.NameOf(row.Placement)),
        ("product", "the liquid, or the liquids together", row => row.Product),
        ("together", "whether it is all liquids of the placement together", row => row.IsTotal),
        ("mph", "ground speed", row => row.Settings.Speed.MilesPerHour),
        ("km_per_h", "ground speed", row => row.Settings.Speed.KilometersPerHour),
        ("gpm_per_row", "flow of one row", row => row.PerRow.UsGallonsPerMinute),
        ("ml_per_min_per_row", "flow of one row", row => row.PerRow.MillilitersPerMinute),
        ("outlets", "flow of each outlet of a row, mL/min, divided by spaces", row => string.Join(' ', row.Outlets.Select(outlet => outlet.MillilitersPerMinute.ToString("R", System.Globalization.CultureInfo.InvariantCulture)))),
        ("water_factor", "times the liquid's flow that water flows through the same orifice", row => row.WaterFactor),
        ("water_ml_per_min_per_row", "flow of water that stands for the liquid's", row => row.WaterPerRow?.MillilitersPerMinute),
        ("kpa", "pressure now", row => row.Settings.Pressure?.Kilopascals),
        ("psi", "pressure now", row => row.Settings.Pressure?.PoundsForcePerSquareInch),
        ("psi_at_125_percent_speed", "pressure that a quarter more speed needs at the same rate, by the orifice law", row => row.PressureForQuarterMore?.PoundsForcePerSquareInch),
        ("caution", "stands over every line", Caution));

    private static ResultTable Catches(ImmutableArray<StreamFlow> flows) => ResultTable.Of(
        "starter-catch",
        "what one row's jug should hold after some seconds",
        flows.SelectMany(flow => flow.Catches.Select(test => (Flow: flow, Test: test))),
        ("treatment", "the treatment", row => row.Flow.Treatment.Name),
        ("placement", "where", row => Placements.NameOf(row.Flow.Placement)),
        ("product", "the liquid, or the liquids together", row => row.Flow.Product),
        ("together", "whether it is all liquids of the placement together", row => row.Flow.IsTotal),
        ("seconds", "how long", row => row.Test.Seconds),
        ("ml", "expected", row => row.Test.Expected.Milliliters),
        ("ml_low", "the least that passes", row => row.Test.Low.Milliliters),
        ("ml_high", "the most that passes", row => row.Test.High.Milliliters),
        ("caution", "stands over every line", Caution));

    private static ResultTable Cautions() => ResultTable.Of(
        "starter-cautions",
        "a caution that stands over every amount near the seed",
        StarterCautions.All,
        ("id", "a stable name", row => row.Id),
        ("caution", "what to heed", row => row.Text));

    private static string Caution<T>(T row) => StarterCautions.LabelFirst;

    private static string VerdictName(ScreenVerdict verdict) => verdict switch
    {
        ScreenVerdict.Under => "under",
        ScreenVerdict.AtLimit => "at the limit",
        ScreenVerdict.Over => "over",
        ScreenVerdict.NotCovered => "not covered",
        ScreenVerdict.SoilNotKnown => "soil not known",
        _ => "amount not known",
    };
}
