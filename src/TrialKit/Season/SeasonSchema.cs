using System.Collections.Immutable;
using TrialKit.Export;
using TrialKit.Results;
using static TrialKit.Season.SeasonType;

namespace TrialKit.Season;

/// <summary>The columns of the two season tables: names, types and meanings are stable.</summary>
/// <remarks>
/// The columns that tell the trial and the measure come first and are alike in both, so that either table stands alone and can be
/// divided by year and crop without the other. A change of a name, a type or a meaning is a new <see cref="Version"/>; a new column is not.
/// </remarks>
internal static class SeasonSchema
{
    /// <summary>The version of names, types and meanings, written into each file.</summary>
    public const int Version = 1;

    /// <summary>One row per trial, measure and comparison of two treatments.</summary>
    public static ImmutableArray<SeasonColumn<ContrastRow>> Contrasts { get; } =
    [
        .. Keys<ContrastRow>(row => row.Trial, row => row.Measure.Measure),
        SeasonColumn<ContrastRow>.Required("treatment", Text, "the treatment's name", row => row.Contrast.Treatment.Name),
        SeasonColumn<ContrastRow>.Required("treatment_label", Text, "its name as printed", row => row.Contrast.Treatment.Label),
        SeasonColumn<ContrastRow>.Required("baseline", Text, "the name of what it is compared with", row => row.Contrast.Baseline.Name),
        SeasonColumn<ContrastRow>.Required("baseline_label", Text, "its name as printed", row => row.Contrast.Baseline.Label),
        SeasonColumn<ContrastRow>.Optional("treatment_mean", Number, "mean of the treatment's strips, adjusted for blocks when strips are missing", row => row.MeanOf(row.Contrast.Treatment), "unit"),
        SeasonColumn<ContrastRow>.Optional("baseline_mean", Number, "mean of the baseline's strips, likewise", row => row.MeanOf(row.Contrast.Baseline), "unit"),
        SeasonColumn<ContrastRow>.Required("difference", Number, "treatment less baseline", row => row.Contrast.Difference, "unit"),
        SeasonColumn<ContrastRow>.Optional("standard_error", Number, "of the difference", row => row.Contrast.Estimate?.StandardError, "unit"),
        SeasonColumn<ContrastRow>.Optional("df", Number, "degrees of freedom of the standard error", row => row.Contrast.Estimate?.DegreesOfFreedom),
        SeasonColumn<ContrastRow>.Optional("replicates", Whole, "pairs or blocks behind the difference", row => row.Contrast.Estimate?.Replicates),
        SeasonColumn<ContrastRow>.Optional("p", Number, "two-sided, as judged", row => row.Contrast.P?.Value),
        SeasonColumn<ContrastRow>.Optional("p_unadjusted", Number, "two-sided, of this comparison alone", row => row.Contrast.Estimate?.PTwoSided.Value),
        SeasonColumn<ContrastRow>.Optional("low", Number, "lower end of the interval at alpha", row => row.Contrast.Interval?.Low, "unit"),
        SeasonColumn<ContrastRow>.Optional("high", Number, "upper end of the interval at alpha", row => row.Contrast.Interval?.High, "unit"),
        SeasonColumn<ContrastRow>.Optional("detectable_80", Number, "true difference shown with a chance of 80 %", row => row.Contrast.Detectable, "unit"),
        SeasonColumn<ContrastRow>.Required("verdict", Text, "shown, not shown, equivalent or not judged, at alpha", row => ResultTables.VerdictName(row.Contrast.Verdict)),
        SeasonColumn<ContrastRow>.Required("judged_by", Text, "the procedure behind p and interval", row => row.Contrast.JudgedBy.Name),
    ];

    /// <summary>One row per strip and measure.</summary>
    public static ImmutableArray<SeasonColumn<StripRow>> Strips { get; } =
    [
        .. Keys<StripRow>(row => row.Trial, row => row.Measure),
        SeasonColumn<StripRow>.Required("strip", Text, "the strip's name", row => row.Entry.Strip.Name),
        SeasonColumn<StripRow>.Required("block", Text, "the pair or block it stands in", row => row.Entry.Strip.Block),
        SeasonColumn<StripRow>.Required("treatment", Text, "the treatment's name", row => row.Entry.Strip.Treatment.Name),
        SeasonColumn<StripRow>.Required("treatment_label", Text, "its name as printed", row => row.Entry.Strip.Treatment.Label),
        SeasonColumn<StripRow>.Optional("order", Whole, "its place across the field, from 1", row => row.Entry.Strip.Order),
        SeasonColumn<StripRow>.Optional("value", Number, "what the measure came to; empty when not recorded or not defined there", row => row.Entry.Value, "unit"),
        SeasonColumn<StripRow>.Optional("left_out", Text, "why the strip is left out of the comparison; empty when it is in", row => row.Entry.Strip.LeftOut),
    ];

    private static IEnumerable<SeasonColumn<TRow>> Keys<TRow>(Func<TRow, SeasonTrial> trial, Func<TRow, Measure> measure) =>
    [
        SeasonColumn<TRow>.Required("year", Whole, "year of planting; for dividing the table", row => trial(row).Identity.Planted.Year),
        SeasonColumn<TRow>.Required("crop", Text, "the crop; for dividing the table", row => trial(row).Identity.Crop),
        SeasonColumn<TRow>.Required("trial", Text, "the trial, by the name of its folder; unlike any other's in the table", row => trial(row).Id),
        SeasonColumn<TRow>.Required("title", Text, "its title", row => trial(row).Identity.Title),
        SeasonColumn<TRow>.Optional("site", Text, "the field's name", row => trial(row).Identity.Site),
        SeasonColumn<TRow>.Optional("latitude", Number, "north is positive", row => trial(row).Identity.Latitude, "degrees"),
        SeasonColumn<TRow>.Optional("longitude", Number, "east is positive", row => trial(row).Identity.Longitude, "degrees"),
        SeasonColumn<TRow>.Required("planted", Date, "the day of planting", row => trial(row).Identity.Planted),
        SeasonColumn<TRow>.Required("layout", Text, "pairs or blocks", row => SeasonNames.Of(SeasonNames.Layouts, trial(row).Identity.Layout)),
        SeasonColumn<TRow>.Required("blocks", Whole, "how many pairs or blocks the trial has", row => trial(row).Identity.Blocks),
        SeasonColumn<TRow>.Required("treatments", Whole, "how many treatments it has", row => trial(row).Identity.Treatments),
        SeasonColumn<TRow>.Required("strips_left_out", Whole, "how many of its strips are left out of the comparison", row => trial(row).Identity.LeftOut),
        SeasonColumn<TRow>.Optional("control", Text, "the control's name; empty in blocks without one", row => trial(row).Identity.Control),
        SeasonColumn<TRow>.Required("alpha", Number, "the level of intervals and verdicts", row => trial(row).Identity.Level.Alpha),
        SeasonColumn<TRow>.Required("units", Text, "us or metric: the units the trial prints", row => SeasonNames.Of(SeasonNames.Units, trial(row).Identity.Units)),
        SeasonColumn<TRow>.Required("heat_method", Text, "how the trial counts heat", row => trial(row).Identity.HeatMethod),
        SeasonColumn<TRow>.Required("fingerprint", Text, "mark of the trial's input files: the same files, the same mark", row => trial(row).Fingerprint),
        SeasonColumn<TRow>.Required("version", Text, "of the program that analysed it", row => Library.Version),
        SeasonColumn<TRow>.Required("measure", Text, "id of the measure", row => measure(row).Id),
        SeasonColumn<TRow>.Required("measure_label", Text, "its name as printed", row => measure(row).Label),
        SeasonColumn<TRow>.Required("unit", Text, "unit of the row's numbers; an empty text for a plain number", row => measure(row).Unit.Symbol),
        SeasonColumn<TRow>.Required("kind", Text, "stand, share, time, heat, length, yield or other", row => SeasonNames.Of(SeasonNames.Kinds, measure(row).Kind)),
        SeasonColumn<TRow>.Required("better", Text, "higher, lower or unsaid", row => SeasonNames.Of(SeasonNames.Betters, measure(row).Better)),
        SeasonColumn<TRow>.Required("headline", YesNo, "whether the first page of a report speaks of it", row => measure(row).IsHeadline),
    ];
}
