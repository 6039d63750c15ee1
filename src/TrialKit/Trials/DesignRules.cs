using System.Globalization;

namespace TrialKit.Trials;

/// <summary>Holds a draft against every <see cref="DesignRule"/>.</summary>
/// <remarks>The rules speak of records, not of files: whoever read the records knows where each stood.</remarks>
public static class DesignRules
{
    private const double PossiblePerSeed = 4;

    // Far above any grain crop, so that only a slip of units or digits is refused.
    private const double PossibleTonnesPerHectare = 100;

    /// <summary>Every violation, in the order of the tables and of the records within each.</summary>
    /// <param name="draft">What a trial would hold.</param>
    public static IEnumerable<RuleViolation> Check(TrialDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return Treatments(draft)
            .Concat(Strips(draft))
            .Concat(StandCounts(draft))
            .Concat(Emergence(draft))
            .Concat(Plants(draft))
            .Concat(Harvests(draft))
            .Concat(Measurements(draft))
            .Concat(Weather(draft));
    }

    private static IEnumerable<RuleViolation> Treatments(TrialDraft draft)
    {
        foreach (var again in Repeats(draft.Treatments, treatment => treatment.Name, Identifier.Comparer))
        {
            yield return Error(DesignRule.TreatmentNamedOnce, again, $"treatment '{again.Name}' is listed a second time", "each treatment once");
        }

        if (draft.Design.Layout != Layout.Pairs)
        {
            yield break;
        }

        if (draft.Treatments.Length != 2)
        {
            yield return Error(DesignRule.PairsHaveTwoTreatments, draft.Design, Text($"layout 'pairs' with {draft.Treatments.Length} treatments"), "two treatments, or layout 'blocks'");
        }

        if (draft.Design.Control is null)
        {
            yield return Error(DesignRule.PairsHaveControl, draft.Design, "layout 'pairs' without a control", "control = the name of the treatment that the other is compared with");
        }
    }

    private static IEnumerable<RuleViolation> Strips(TrialDraft draft)
    {
        var names = new HashSet<string>(Identifier.Comparer);
        var orders = new HashSet<int>();
        var places = new HashSet<(string, string)>();
        foreach (var strip in draft.Strips)
        {
            if (!names.Add(strip.Name))
            {
                yield return Error(DesignRule.StripListedOnce, strip, $"strip '{strip.Name}' is listed a second time", "each strip once");
            }

            if (!places.Add((Key(strip.Block), Key(strip.Treatment.Name))))
            {
                yield return Error(DesignRule.TreatmentOnceInBlock, strip, $"block '{strip.Block}' holds treatment '{strip.Treatment.Name}' a second time", "each treatment once in a block");
            }

            if (strip.Order is { } order && !orders.Add(order))
            {
                yield return Error(DesignRule.OrderTakenOnce, strip, Text($"order {order} is taken a second time"), "each place across the field once");
            }
        }

        if (draft.Design.Control is not { } control)
        {
            yield break;
        }

        foreach (var block in draft.Strips.GroupBy(strip => strip.Block, Identifier.Comparer))
        {
            if (!block.Any(strip => Identifier.Same(strip.Treatment.Name, control.Name)))
            {
                yield return Warning(DesignRule.BlockHasControl, block.First(), item: null, $"block '{block.Key}' has no strip of the control '{control.Name}'", "the control in each block; this block leaves the comparison with it");
            }
        }
    }

    private static IEnumerable<RuleViolation> StandCounts(TrialDraft draft)
    {
        var early = new HashSet<Strip>(ReferenceEqualityComparer.Instance);
        foreach (var count in draft.StandCounts)
        {
            if (count.Date < count.Strip.Planted && early.Add(count.Strip))
            {
                yield return BeforePlanting(count, item: null, count.Date.Value.ToDateTime(TimeOnly.MinValue), count.Strip);
            }

            if (draft.Planting.Seeds is { } rate
                && count.Plants > PossiblePerSeed * rate.SeedsAlong(count.TotalRow, draft.Planting.RowSpacing))
            {
                yield return Impossible(count, item: null, count.Plants, rate.SeedsAlong(count.TotalRow, draft.Planting.RowSpacing));
            }
        }
    }

    private static IEnumerable<RuleViolation> Emergence(TrialDraft draft)
    {
        var early = new HashSet<Strip>(ReferenceEqualityComparer.Instance);
        return draft.Emergence.SelectMany(spot => Visits(draft, spot, early));
    }

    /// <summary>What one spot's visits break.</summary>
    /// <param name="draft">The trial.</param>
    /// <param name="spot">The spot.</param>
    /// <param name="early">Strips whose planting was found to come after a visit: a wrong date is one fault, not one for each visit.</param>
    private static IEnumerable<RuleViolation> Visits(TrialDraft draft, EmergenceSpot spot, HashSet<Strip> early)
    {
        var visits = spot.Visits;
        var seeds = SeedsExpected(draft, spot);
        if (visits.Length == 1)
        {
            // While the season runs that is how it stands after the first evening.
            yield return Warning(DesignRule.VisitedTwice, spot, item: null, $"spot '{spot.Spot}' of strip '{spot.Strip}' has one visit only", "a second visit; until then the spot takes no part in timing");
        }

        var highest = 0;
        for (var i = 0; i < visits.Length; i++)
        {
            if (visits[i].At < spot.Strip.Planted.ToDateTime(TimeOnly.MinValue) && early.Add(spot.Strip))
            {
                yield return BeforePlanting(spot, i, visits[i].At, spot.Strip);
            }

            if (i > 0 && visits[i].At <= visits[i - 1].At)
            {
                yield return Error(DesignRule.VisitsInOrder, spot, $"visit {Text(visits[i].At)} follows visit {Text(visits[i - 1].At)} at spot '{spot.Spot}' of strip '{spot.Strip}'", "visits in the order of time", i);
            }

            if (i > 0 && visits[i].Plants < visits[i - 1].Plants)
            {
                yield return Warning(DesignRule.CumulativeCountsDoNotFall, spot, i, Text($"{visits[i].Plants} plants after {visits[i - 1].Plants} at spot '{spot.Spot}' of strip '{spot.Strip}'"), Text($"a cumulative count that does not fall; {highest} is used"));
            }

            highest = Math.Max(highest, visits[i].Plants);
            if (seeds is { } sown && visits[i].Plants > PossiblePerSeed * sown)
            {
                yield return Impossible(spot, i, visits[i].Plants, sown);
            }
        }

        if (visits.Length > 1 && visits[0].Plants > 0)
        {
            yield return Warning(DesignRule.FirstVisitFindsNothing, spot, item: 0, Text($"{visits[0].Plants} {(visits[0].Plants == 1 ? "plant" : "plants")} at the first visit to spot '{spot.Spot}' of strip '{spot.Strip}'"), "a visit before the first plant is up; the first interval reaches back to planting");
        }

        if (spot.Seeds is { } known && highest > known && highest <= PossiblePerSeed * known)
        {
            yield return Warning(DesignRule.PlantsWithinSeeds, spot, item: visits.Length - 1, Text($"{highest} plants up from {known} seeds at spot '{spot.Spot}' of strip '{spot.Strip}'"), "no more plants than seeds; the plants are used as the seeds");
        }
    }

    private static IEnumerable<RuleViolation> Plants(TrialDraft draft)
    {
        var spots = new Dictionary<(string, string), TapeSpot>();
        var early = new HashSet<Strip>(ReferenceEqualityComparer.Instance);
        TapeSpot? spot = null;
        foreach (var plant in draft.Plants)
        {
            // Plants are written down spot by spot, so the spot of the plant before is nearly always this one's.
            if (spot is null || !spot.Holds(plant))
            {
                var key = (Key(plant.Strip.Name), Key(plant.Spot));
                spots.TryAdd(key, new TapeSpot(plant));
                spot = spots[key];
            }

            if (!spot.Names.Add(plant.Name))
            {
                yield return Error(DesignRule.PlantListedOnce, plant, $"plant '{plant.Name}' of spot '{plant.Spot}' of strip '{plant.Strip}' is listed a second time", "each plant once in a spot");
            }

            if (plant.FirstSeen is { } seen && seen < plant.Strip.Planted.ToDateTime(TimeOnly.MinValue) && early.Add(plant.Strip))
            {
                yield return BeforePlanting(plant, item: null, seen, plant.Strip);
            }

            if (plant.Position is not { } position)
            {
                continue;
            }

            if (spot.Furthest is not { } before || position.Meters >= before.Position!.Value.Meters)
            {
                spot.Furthest = plant;
                continue;
            }

            yield return Warning(DesignRule.PositionsDoNotGoBack, plant, item: null, $"plant '{plant.Name}' stands before plant '{before.Name}' on the tape of spot '{plant.Spot}' of strip '{plant.Strip}'", "positions that grow along the tape; they are used in the order of the tape");
        }
    }

    private static IEnumerable<RuleViolation> Harvests(TrialDraft draft)
    {
        var weighed = new HashSet<string>(Identifier.Comparer);
        foreach (var harvest in draft.Harvests)
        {
            if (!weighed.Add(harvest.Strip.Name))
            {
                yield return Error(DesignRule.StripWeighedOnce, harvest, $"strip '{harvest.Strip}' is weighed a second time", "each strip once");
            }

            if (harvest.HarvestedArea is { } area && harvest.Weight.Tonnes / area.Hectares is > PossibleTonnesPerHectare and var yield)
            {
                yield return Error(DesignRule.YieldIsPossible, harvest, Text($"strip '{harvest.Strip}' weighed {yield:0} t/ha as harvested"), Text($"no more than {PossibleTonnesPerHectare} t/ha"));
            }
        }
    }

    private static IEnumerable<RuleViolation> Measurements(TrialDraft draft)
    {
        var units = new Dictionary<string, string?>(Identifier.Comparer);
        foreach (var value in draft.Measurements)
        {
            if (!units.TryAdd(value.Measure, value.Unit) && !Identifier.Same(units[value.Measure], value.Unit))
            {
                yield return Error(DesignRule.MeasureHasOneUnit, value, $"measure '{value.Measure}' in {Unit(value.Unit)} after {Unit(units[value.Measure])}", "one unit for a measure");
            }
        }

        static string Unit(string? unit) => unit is null ? "no unit" : $"'{unit}'";
    }

    private static IEnumerable<RuleViolation> Weather(TrialDraft draft)
    {
        EmergenceSpot[] timed = [.. draft.Emergence.Where(spot => spot.IsTimed)];
        if ((draft.SoilTemperature ?? draft.Weather) is not { } series || timed.Length == 0)
        {
            yield break;
        }

        var first = timed.Min(spot => spot.Strip.Planted);
        var last = DateOnly.FromDateTime(timed.Max(spot => spot.Visits[^1].At).AddTicks(-1));
        var missing = series.MissingDays(first, last).ToArray();
        if (missing.Length > 0)
        {
            yield return Error(DesignRule.WeatherCoversEmergence, series, $"no temperatures for {Ranges(missing)}", $"each day from planting ({Text(first)}) to the last visit");
        }
    }

    /// <summary>Seeds expected at a spot: those known, else row length times the seeding rate; null when neither is known.</summary>
    internal static double? SeedsExpected(TrialDraft draft, EmergenceSpot spot) =>
        spot.Seeds ?? (spot.Row is { } row ? draft.Planting.Seeds?.SeedsAlong(row, draft.Planting.RowSpacing) : null);

    private static IEnumerable<T> Repeats<T>(IEnumerable<T> items, Func<T, string> name, IEqualityComparer<string> comparer)
    {
        var names = new HashSet<string>(comparer);
        return items.Where(item => !names.Add(name(item)));
    }

    private static RuleViolation BeforePlanting(object subject, int? item, DateTime found, Strip strip) =>
        Error(DesignRule.NotBeforePlanting, subject, $"{Text(found)} lies before the planting of strip '{strip}'", $"a date from {Text(strip.Planted)} on", item);

    private static RuleViolation Impossible(object subject, int? item, int plants, double seeds) =>
        Error(DesignRule.CountIsPossible, subject, Text($"{plants} plants where about {seeds:0.#} seeds were dropped"), "no more than four times the seeds dropped", item);

    private static RuleViolation Error(DesignRule rule, object subject, string found, string expected, int? item = null) =>
        new(rule, IsError: true, subject, item, found, expected);

    private static RuleViolation Warning(DesignRule rule, object subject, int? item, string found, string expected) =>
        new(rule, IsError: false, subject, item, found, expected);

    private static string Ranges(DateOnly[] days)
    {
        var ranges = new List<string>();
        for (var start = 0; start < days.Length;)
        {
            var end = start;
            while (end + 1 < days.Length && days[end + 1] == days[end].AddDays(1))
            {
                end++;
            }

            ranges.Add(end == start ? Text(days[start]) : $"{Text(days[start])} to {Text(days[end])}");
            start = end + 1;
        }

        return string.Join(", ", ranges);
    }

    private static string Key(string name) => name.Trim().ToUpperInvariant();

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Text(DateTime moment) =>
        moment.ToString(moment.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The plants met so far at one spot.</summary>
    private sealed class TapeSpot(Plant first)
    {
        public HashSet<string> Names { get; } = new(Identifier.Comparer);

        public Plant? Furthest { get; set; }

        public bool Holds(Plant plant) => ReferenceEquals(plant.Strip, first.Strip) && string.Equals(plant.Spot, first.Spot, StringComparison.Ordinal);
    }
}
