using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics.EventTimes;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Emergence;

/// <summary>What a reader is told of the counts, the curve and the heat of a strip: every message of this stage.</summary>
internal static class EmergenceFindings
{
    // A flag of a step makes those about errors and intervals redundant: there is no curve to doubt.
    private static readonly (EventTimeFlags Flag, string Id, FindingWeight Weight, string Message)[] Steps =
    [
        (EventTimeFlags.NothingUp, "nothing-up", FindingWeight.Serious, "Nothing was up by the last visit, so there is no timing."),
        (EventTimeFlags.AllInOneInterval, "fit-one-interval", FindingWeight.Serious, "All plants came up between two visits; when, and how evenly, is not known."),
        (EventTimeFlags.AllInTwoIntervals, "fit-two-intervals", FindingWeight.Serious, "All plants came up in two intervals that meet at one visit; how evenly is not known, and no curve can be fitted."),
        (EventTimeFlags.OnePlant, "fit-one-plant", FindingWeight.Serious, "One plant came up; one plant has no spread."),
    ];

    private static readonly (EventTimeFlags Flag, string Id, FindingWeight Weight, string Message)[] Curves =
    [
        (EventTimeFlags.ShareAtBoundary, "fit-share-at-one", FindingWeight.Note, "By the curve every seed comes up in the end; the share that never does cannot be told from none."),
        (EventTimeFlags.TooFewIntervals, "fit-few-intervals", FindingWeight.Caution, "Plants came up in so few of the intervals between visits that the shape of the curve cannot be tested."),
        (EventTimeFlags.StillRising, "fit-still-rising", FindingWeight.Caution, "More than one in twenty of the plants expected were still to come at the last visit; the late end of the curve is the model's word."),
        (EventTimeFlags.InformationSingular, "fit-no-errors", FindingWeight.Caution, "The counts do not fix every parameter of the curve, so there are no standard errors."),
        (EventTimeFlags.NotConverged, "fit-not-converged", FindingWeight.Serious, "The search for the best curve did not come to rest; no times are given."),
    ];

    /// <summary>What is to be said of the counts.</summary>
    public static IEnumerable<Finding> OfCounts(Strip strip, ImmutableArray<WatchedSpot> spots, double? seeds)
    {
        foreach (var spot in spots)
        {
            if (spot.Visits.BeganLate)
            {
                yield return new("first-visit-late", FindingWeight.Caution, Text($"{spot.Up[0]} plants were up at the first visit; their interval reaches back to planting, and nothing tells when the first came up: no share up within 24 h or 48 h of it is given, and no lag behind it."), spot.Place);
            }

            foreach (var visit in spot.Fell)
            {
                yield return new("counts-fell", FindingWeight.Caution, Text($"{spot.Spot.Visits[visit].Plants} plants at the visit of {spot.Spot.Visits[visit].At:yyyy-MM-dd} after {spot.Up[visit]} before: plants died or were missed, and {spot.Up[visit]} is used."), spot.Place);
            }

            if (spot.SeedsAreKnown && spot.Final > spot.Seeds)
            {
                yield return new("plants-over-seeds", FindingWeight.Caution, Text($"{spot.Final} plants came up from {spot.Seeds} seeds; the curve is fitted with the plants as the seeds."), spot.Place);
            }
        }

        if (seeds is null)
        {
            yield return new("seeds-unknown", FindingWeight.Caution, "The seeds sown are not known at every spot, so the share that comes up is not estimated; the curve is that of the plants seen.", strip.Name);
            yield break;
        }

        var expected = spots.Where(spot => !spot.SeedsAreKnown).ToArray();
        if (expected.Sum(spot => spot.Final) > expected.Sum(spot => spot.Seeds))
        {
            yield return new("plants-over-seeds", FindingWeight.Caution, Text($"{expected.Sum(spot => spot.Final)} plants came up where row length and seeding rate give {expected.Sum(spot => spot.Seeds):0.#} seeds; the curve is fitted with the plants as the seeds."), strip.Name);
        }
    }

    /// <summary>What is to be said of the fitted curve.</summary>
    public static IEnumerable<Finding> OfFit(Strip strip, EventTimeFit fit)
    {
        var table = fit.Curve is null ? Steps : Curves;
        return table
            .Where(row => fit.Flags.HasFlag(row.Flag))
            .Select(row => new Finding(row.Id, row.Weight, row.Message, strip.Name));
    }

    /// <summary>What is to be said of the times and their heat.</summary>
    public static IEnumerable<Finding> OfTimes(StripTrial trial, StripEmergence strip)
    {
        if (strip.T90 is not { } t90)
        {
            yield break;
        }

        if (t90.Days > strip.LastVisit)
        {
            yield return new("t90-beyond-last-visit", FindingWeight.Caution, Text($"T90 lies {t90.Days - strip.LastVisit:0.0} days after the last visit; it and the spread are the model's word."), strip.Strip.Name);
        }

        if (trial.SoilTemperature is not null)
        {
            yield return new("soil-temperature-used", FindingWeight.Note, "Heat is counted from the temperatures at seed depth, not from those of the air.");
        }
        else if (trial.Weather is null)
        {
            yield return new("no-temperatures", FindingWeight.Note, "There are no temperatures, so times are given in days only.");
            yield break;
        }

        if (t90.Heat is null)
        {
            yield return new("heat-not-on-record", FindingWeight.Caution, "Temperatures are not on record for every day up to T90; heat is given only as far as they are.", strip.Strip.Name);
        }
    }

    /// <summary>What is to be said where visits leave a figure untold.</summary>
    public static IEnumerable<Finding> OfVisits(StripEmergence strip, bool together, bool beganLate)
    {
        if (!together)
        {
            yield return new("spots-visited-apart", FindingWeight.Note, "The spots were not visited at the same times: the curves use each spot's own visits, and there is no table of indices.", strip.Strip.Name);
        }

        // Where plants were up at the first visit, that was said already.
        if (strip.PlantsUp > 0 && !beganLate && (strip.PercentWithin24Hours is null || strip.PercentWithin48Hours is null))
        {
            var hours = strip.PercentWithin24Hours is not null ? "48 h" : strip.PercentWithin48Hours is not null ? "24 h" : "24 h and 48 h";
            yield return new("visits-too-far-apart", FindingWeight.Note, $"The share up within {hours} of the first plant is not known: it takes a visit at most a day before the one that found the first plant, and one within 3 h of the moment, at every spot.", strip.Strip.Name);
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
