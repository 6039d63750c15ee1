using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>How a measure is spoken of.</summary>
/// <param name="Opening">The beginning of a sentence that goes on with an amount and a direction: <c>Half the plants were up</c> (8 hours sooner).</param>
/// <param name="Noun">The measure within a sentence, after <c>no difference in</c>.</param>
/// <param name="More">The direction of a positive difference, such as <c>later</c>.</param>
/// <param name="Less">The direction of a negative difference, such as <c>sooner</c>.</param>
internal sealed record MeasureWords(string Opening, string Noun, string More, string Less)
{
    private static readonly Dictionary<string, MeasureWords> ById = new(StringComparer.Ordinal)
    {
        ["stand"] = Level("The final stand was", "final stand"),
        ["stand-share"] = Level("The share of dropped seeds that stand was", "the share of dropped seeds that stand"),
        ["emergence-share"] = Level("The share of seeds that came up was", "the share of seeds that came up"),
        ["t10"] = Time("The first tenth of the plants were up", "the time to the first tenth of the plants"),
        ["t50"] = Time("Half the plants were up", "the time to half the plants up"),
        ["t90"] = Time("Nine tenths of the plants were up", "the time to nine tenths of the plants"),
        ["spread"] = new("The time from the first tenth up to the last tenth was", "the time from the first tenth up to the last tenth", "longer", "shorter"),
        ["t50-sown"] = Time("Half the seeds were up", "the time to half the seeds up"),
        ["lag-mean"] = new("Plants came up behind the first at their spot by", "the mean lag behind the first plant", "more", "less"),
        ["lag-sd"] = new("The lag behind the first plant varied (standard deviation)", "how the lag behind the first plant varies", "more", "less"),
        ["late-3d"] = new("More than 3 days behind the first at their spot were", "the share more than 3 days behind the first", "more", "fewer"),
        ["stage-behind"] = new("One leaf or more behind their spot were", "the share one leaf or more behind", "more", "fewer"),
        ["stage-lag"] = Heat("Plants lagged in leaf stage by", "the lag in leaf stage"),
        ["depth-near"] = Level("The share of seed within a quarter inch of its target was", "the share of seed near its target depth"),
        ["heat-t10"] = Heat("The first tenth of the plants took", "the heat to the first tenth of the plants"),
        ["heat-t50"] = Heat("Half the plants were up after", "the heat to half the plants up"),
        ["heat-t90"] = Heat("Nine tenths of the plants took", "the heat to nine tenths of the plants"),
        ["heat-spread"] = Heat("From the first tenth up to the last tenth took", "the heat from the first tenth up to the last tenth"),
        ["up-24h"] = new("Up within 24 hours of the first at their spot were", "the share up within 24 hours of the first", "more", "fewer"),
        ["up-48h"] = new("Up within 48 hours of the first at their spot were", "the share up within 48 hours of the first", "more", "fewer"),
        ["spacing-mean"] = new("The mean distance between plants was", "the mean distance between plants", "wider", "narrower"),
        ["spacing-sd"] = new("Plant spacing varied (standard deviation)", "how plant spacing varies", "more", "less"),
        ["spacing-cv"] = new("The coefficient of variation of plant spacing was", "the coefficient of variation of plant spacing", "larger", "smaller"),
        ["spacing-multiples"] = Level("The share of doubles among the spacings was", "the share of doubles"),
        ["spacing-single"] = Level("The share of single spacings was", "the share of single spacings"),
        ["spacing-missed"] = Level("The share of skips among the spacings was", "the share of skips"),
        ["depth"] = new("Seed lay", "seed depth", "deeper", "shallower"),
        ["depth-sd"] = new("Seed depth varied (standard deviation)", "how seed depth varies", "more", "less"),
        ["yield"] = Level("Yield was", "yield"),
    };

    /// <summary>The words of a measure; one of the trial's own measures is spoken of by its label.</summary>
    public static MeasureWords Of(Measure measure) =>
        ById.TryGetValue(measure.Id, out var words) ? words : Level($"{char.ToUpperInvariant(measure.Label[0])}{measure.Label[1..]} was", measure.Label);

    private static MeasureWords Level(string opening, string noun) => new(opening, noun, "higher", "lower");

    private static MeasureWords Time(string opening, string noun) => new(opening, noun, "later", "sooner");

    private static MeasureWords Heat(string opening, string noun) => new(opening, noun, "more", "less");
}
