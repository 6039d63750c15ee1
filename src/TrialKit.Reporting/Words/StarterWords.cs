using System.Globalization;
using TrialKit.Reporting.Document;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Words;

/// <summary>What is put near the seed, in sentences.</summary>
public static class StarterWords
{
    /// <summary>What the orifice law does not hold for.</summary>
    public const string OrificeLimits = "The pressure follows the orifice law: flow goes as the square root of pressure. It does not hold across check valves nor for viscous products; the catch test decides.";

    /// <summary>How an amount and a limit are compared.</summary>
    public const string Compared = "An amount is rounded as the limit is printed before the two are compared, as Kansas State University does: 7.92 and 8.04 lb both meet its limit of 8.";

    /// <summary>What the salt index says and what it does not.</summary>
    public const string SaltRanking = "For equal weights, sodium nitrate being 100. The index ranks products; it does not predict a loss of stand.";

    private const string LabelGoverns = "The label governs.";
    private const string More = "see What was put near the seed";

    /// <summary>A publication of limits: who, where, of which year, and what it says beside them.</summary>
    public static string Source(LimitSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var year = source.Year is { } known ? NumberText.Number(known, 0).Replace(",", "", StringComparison.Ordinal) : "the copy read names no year";
        return $"{Capital(source.Name)}: {source.Title}; {year}. {source.Note}";
    }

    /// <summary>How one placement stands to one source.</summary>
    public static string Screen(ScreenLine line, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(line);
        var place = Capital(Placements.WordsOf(line.Placement));
        return line.Verdict switch
        {
            ScreenVerdict.NotCovered => $"{place}: not covered by {Source(line)}: {line.Reason}.",
            ScreenVerdict.SoilNotKnown => $"{place}: the limit of {Source(line)} depends on the soil, which is not known here: give {line.Reason}.",
            ScreenVerdict.AmountNotKnown => $"{place}: the limit of {Source(line)} was not applied: {line.Reason}.",
            _ => $"{place}: {RateText.Pounds(line.PoundsPerAcre!.Value, units)} of {line.Limit!.SumWords}, {Against(line, units)} of {Source(line)} ({Terms(line)}).",
        };
    }

    /// <summary>What is in the seed furrow and should not be.</summary>
    public static string Hazard(Product product, FurrowHazard hazard)
    {
        ArgumentNullException.ThrowIfNull(product);
        ArgumentNullException.ThrowIfNull(hazard);
        return hazard.IsNever
            ? $"{product.Name}: never put {hazard.What} into the seed furrow; {hazard.Reason} ({hazard.Source})."
            : $"{product.Name}: be wary of {hazard.What} in the seed furrow; it {hazard.Reason} ({hazard.Source}).";
    }

    /// <summary>A doubt of the starter in one line, as much of it as some letters hold; null of a finding that has no such line.</summary>
    /// <param name="id">The finding's id.</param>
    /// <param name="review">What was put where.</param>
    /// <param name="letters">The most letters; the shortest form is given where even that is longer.</param>
    public static string? InOneLine(string id, StarterReview review, int letters)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(review);
        string[] forms = id switch
        {
            "starter-over-limit" => Over(review),
            "never-in-furrow" => Hazards(review, isNever: true, "In the seed furrow lies what is never to be there"),
            "furrow-wary" => Hazards(review, isNever: false, "In the seed furrow lies what sources warn of"),
            _ => [],
        };
        return forms.FirstOrDefault(form => form.Length <= letters) ?? forms.LastOrDefault();
    }

    /// <summary>What flows, with its treatment: <c>Split, 10-34-0</c>; once where both have one name.</summary>
    public static string Name(StreamFlow flow)
    {
        ArgumentNullException.ThrowIfNull(flow);
        var product = flow.IsTotal ? $"{flow.Product} together" : flow.Product;
        return product == flow.Treatment.Label ? product : $"{flow.Treatment.Label}, {product}";
    }

    /// <summary>The flow of one row and what it takes to set it.</summary>
    public static string Flow(StreamFlow flow, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(flow);
        var text = $"{Name(flow)}, {Placements.NameOf(flow.Placement)}{(flow.IsTotal ? ", run through the same outlets" : "")}: {RateText.Flow(flow.PerRow, units)} a row at {RateText.Speed(flow.Settings.Speed, units)}";
        text += flow.Outlets.Length > 1 ? $", {Outlets(flow)} from its {NumberText.Count(flow.Outlets.Length)} outlets." : ".";
        if (flow is { WaterFactor: { } factor, WaterPerRow: { } water })
        {
            text += $" With water through the same outlets, set {RateText.Flow(water, units)} ({NumberText.Number(factor, 2)} times); a positive-displacement pump needs no such correction.";
        }

        return flow is { Settings.Pressure: { } now, PressureForQuarterMore: { } more }
            ? $"{text} A quarter more speed at the same rate needs {RateText.Pressure(more, units)} in place of {RateText.Pressure(now, units)}."
            : text;
    }

    /// <summary>What each outlet of a row gives: <c>115 and 172 mL/min</c>.</summary>
    public static string Outlets(StreamFlow flow)
    {
        ArgumentNullException.ThrowIfNull(flow);
        return $"{string.Join(" and ", flow.Outlets.Select(outlet => NumberText.Figures(outlet.MillilitersPerMinute, 3)))} mL/min";
    }

    /// <summary>The pressure now and at more speed, in few words; null without a pressure.</summary>
    public static string? Pressure(StreamFlow flow, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(flow);
        return flow is { Settings.Pressure: { } now, PressureForQuarterMore: { } more }
            ? $"{RateText.Pressure(now, units)}, a quarter faster {RateText.Pressure(more, units)}"
            : null;
    }

    /// <summary>What water stands for and when not.</summary>
    /// <param name="factor">How many times the liquid's flow it flows.</param>
    public static string Water(double factor) =>
        $"Water runs {NumberText.Number(factor, 2)} times as fast through the same outlets at the same pressure; a positive-displacement pump needs no such correction.";

    private static string Against(ScreenLine line, UnitSystem units) => (line.Verdict, line.Limit!.PoundsPerAcre) switch
    {
        (_, 0) => "where none is the limit",
        (ScreenVerdict.Over, _) => $"over the {RateText.Limit(line.Limit, units)}",
        (ScreenVerdict.AtLimit, _) => $"at the {RateText.Limit(line.Limit, units)}",
        _ => $"under the {RateText.Limit(line.Limit, units)}",
    };

    // From the fullest to the shortest.
    private static string[] Over(StarterReview review)
    {
        var over = review.Treatments.Where(treatment => treatment.Screen.Any(line => line.Verdict == ScreenVerdict.Over)).ToArray();
        string[] sources = [.. over.SelectMany(treatment => treatment.Screen).Where(line => line.Verdict == ScreenVerdict.Over).Select(line => line.Source.Name).Distinct(StringComparer.Ordinal)];
        var named = $"{LabelGoverns} Over the {(sources.Length == 1 ? "limit" : "limits")} of {List(sources)}";
        return
        [
            $"{named}: {string.Join("; ", over.Select(treatment => treatment.Treatment.Label))}; {More}.",
            $"{named}; {More}.",
            $"{LabelGoverns} Over {NumberText.Count(sources.Length)} published {(sources.Length == 1 ? "limit" : "limits")}; {More}.",
        ];
    }

    private static string[] Hazards(StarterReview review, bool isNever, string lead)
    {
        var found = review.Treatments.SelectMany(treatment => treatment.Hazards.Where(entry => entry.Hazard.IsNever == isNever).Select(entry => (treatment.Treatment.Label, entry.Hazard.What))).Distinct().ToArray();
        return
        [
            $"{LabelGoverns} {lead}: {string.Join("; ", found.Select(entry => $"{entry.What} ({entry.Label})"))}; {More}.",
            $"{LabelGoverns} {lead}: {List([.. found.Select(entry => entry.What).Distinct(StringComparer.Ordinal)])}; {More}.",
            $"{LabelGoverns} {lead}; {More}.",
        ];
    }

    private static string List(string[] names) => names.Length < 2 ? string.Concat(names) : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";

    private static string Terms(ScreenLine line) => string.Join(
        ", ",
        new[] { line.Limit!.Crop, line.Limit.Soil == LimitSoil.Any ? null : line.Limit.SoilWords, line.Reason, line.Limit.IsFromMemory ? "value from memory" : null, line.Verdict == ScreenVerdict.AtLimit ? "the amount rounded as the limit is printed" : null }.OfType<string>());

    private static string Source(ScreenLine line) => line.Source.Year is { } year ? string.Create(CultureInfo.InvariantCulture, $"{line.Source.Name} of {year}") : line.Source.Name;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
