using System.Collections.Immutable;
using TrialKit.Heat;
using TrialKit.Numerics.EventTimes;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Emergence;

/// <summary>When and how evenly each strip came up, from counts at visits to its flagged spots.</summary>
/// <remarks>
/// A plant first seen at one visit came up at some moment since the visit before; a seed not up at the last visit may come up later or never.
/// A curve with a share that never comes up is fitted by maximum likelihood to these intervals, each spot adding its own
/// (Onofri, Mesgaran and Ritz 2022, Weed Science); one shape serves all strips (see <see cref="CurveChoice"/>). T10, T50 and T90 are of the plants that come up. Where counts fall, the highest so far is used.
/// The step curve beside it is the plain share at each visit, or the estimate of Turnbull 1976 (J. R. Stat. Soc. B 38:290-295) for spots visited at
/// different times. Without the seeds sown at every spot, the curve is that of the plants seen, its share fixed at 1.
/// </remarks>
public static class EmergenceTiming
{
    /// <summary>The procedure.</summary>
    public static Method Method { get; } = new(
        "Event-time analysis: curve with a share that never comes up, interval-censored maximum likelihood",
        "Onofri, Mesgaran & Ritz 2022, Weed Science; T90 - T10 as in Egli & Rucker 2012, Crop Sci. 52:2774-2782",
        "docs/methods/emergence-timing.md");

    /// <summary>The timings, in the order of the strips.</summary>
    /// <param name="trial">The trial; strips without a flagged spot are not listed.</param>
    public static ImmutableArray<StripEmergence> Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var spots = trial.Emergence.Where(spot => spot.IsTimed).ToLookup(spot => spot.Strip.Name, spot => WatchedSpot.Of(spot, trial.Planting), Identifier.Comparer);
        WatchedStrip[] watched = [.. trial.Strips.Where(strip => spots.Contains(strip.Name)).Select(strip => WatchedStrip.Of(strip, [.. spots[strip.Name]]))];
        var shape = CurveChoice.Of(watched.Where(strip => strip.Strip.IsAnalysed).Select(strip => strip.Fits), trial.Design.Curve).Shape;
        var clocks = new Dictionary<DateOnly, HeatClocks>();
        var strips = ImmutableArray.CreateBuilder<StripEmergence>(watched.Length);
        foreach (var strip in watched)
        {
            if (!clocks.TryGetValue(strip.Strip.Planted, out var clock))
            {
                clocks.Add(strip.Strip.Planted, clock = HeatClocks.Of(trial, strip.Strip.Planted));
            }

            strips.Add(Of(trial, strip, shape, clock));
        }

        return strips.MoveToImmutable();
    }

    private static StripEmergence Of(StripTrial trial, WatchedStrip watched, EventTimeShape shape, HeatClocks clocks)
    {
        var (strip, spots, seeds) = (watched.Strip, watched.Spots, watched.Seeds);
        var fit = watched.Fits.Single(candidate => candidate.Shape == shape);
        var together = spots.All(spot => spot.Days.AsSpan().SequenceEqual(spots[0].Days));
        var result = new StripEmergence
        {
            Strip = strip,
            Spots = [.. spots.Select(spot => spot.Spot.Spot)],
            SeedsSown = seeds,
            PlantsUp = spots.Sum(spot => spot.Final),
            LastVisit = spots.Max(spot => spot.Days[^1]),
            Fit = EventTimeEstimate.From(fit),
            Fits = [fit, .. watched.Fits.Where(candidate => candidate != fit)],
            T10 = OfEmerged(fit, 0.1, clocks),
            T50 = OfEmerged(fit, 0.5, clocks),
            T90 = OfEmerged(fit, 0.9, clocks),
            T10OfSown = OfSown(fit, 0.1, seeds, clocks),
            T50OfSown = OfSown(fit, 0.5, seeds, clocks),
            T90OfSown = OfSown(fit, 0.9, seeds, clocks),
            Spread = Spread(fit, clocks),
            HeatMethod = trial.Heat.Method,
            PercentWithin24Hours = EarlyShare.Percent(spots.Select(spot => spot.Visits), 1),
            PercentWithin48Hours = EarlyShare.Percent(spots.Select(spot => spot.Visits), 2),
            Curve = together ? Steps(spots, seeds) : Steps(spots, watched.Counts),
            Indices = together ? Indices(spots, seeds, clocks.Trial, trial.Units) : [],
            Findings = [],
        };
        return result with
        {
            Findings =
            [
                .. EmergenceFindings.OfCounts(strip, spots, seeds),
                .. EmergenceFindings.OfFit(strip, fit),
                .. EmergenceFindings.OfTimes(trial, result),
                .. EmergenceFindings.OfVisits(result, together, spots.Any(spot => spot.Visits.BeganLate)),
            ],
        };
    }

    private static EmergenceTime? OfEmerged(EventTimeFit fit, double share, HeatClocks clocks) => Time(fit, fit.QuantileOfEmerged(share), clocks);

    private static EmergenceTime? OfSown(EventTimeFit fit, double share, double? seeds, HeatClocks clocks) =>
        seeds is null ? null : Time(fit, fit.QuantileOfSown(share), clocks);

    private static EmergenceTime? Time(EventTimeFit fit, EventQuantile? quantile, HeatClocks clocks) =>
        fit.Converged && quantile is { } time
            ? new(time.Time, time.StandardError, clocks.Trial?.HeatAt(time.Time), clocks.Average?.HeatAt(time.Time))
            : null;

    private static EmergenceSpread? Spread(EventTimeFit fit, HeatClocks clocks)
    {
        if (!fit.Converged || fit.Spread(0.1, 0.9) is not { } spread)
        {
            return null;
        }

        var (t10, t90) = (fit.QuantileOfEmerged(0.1)!.Value.Time, fit.QuantileOfEmerged(0.9)!.Value.Time);
        return new(spread.Time, spread.StandardError, Between(clocks.Trial), Between(clocks.Average));

        HeatSumDifference? Between(HeatClock? clock) => clock?.HeatAt(t90) - clock?.HeatAt(t10);
    }

    private static ImmutableArray<ShareUp> Steps(ImmutableArray<WatchedSpot> spots, double? seeds)
    {
        var curve = StepCurve.FromCumulative(spots[0].Days, Pooled(spots), seeds > 0 ? seeds : null);
        var points = ImmutableArray.CreateBuilder<ShareUp>(curve.Times.Length);
        for (var i = 0; i < curve.Times.Length; i++)
        {
            points.Add(new(curve.Times[i], curve.Share[i], curve.StandardError[i]));
        }

        return points.MoveToImmutable();
    }

    // With visits at different times the shares are those of Turnbull's estimate, at the visits where it is one number.
    private static ImmutableArray<ShareUp> Steps(ImmutableArray<WatchedSpot> spots, IntervalCounts counts)
    {
        if (counts.Total == 0)
        {
            return [];
        }

        var estimate = Turnbull.Fit(counts);
        return [.. spots
            .SelectMany(spot => spot.Days)
            .Distinct()
            .Order()
            .Select(day => (Day: day, Share: estimate.CdfAt(day)))
            .Where(point => point.Share.Lower == point.Share.Upper)
            .Select(point => new ShareUp(point.Day, point.Share.Lower, StandardError: null))];
    }

    private static ImmutableArray<TimingIndex> Indices(ImmutableArray<WatchedSpot> spots, double? seeds, HeatClock? clock, UnitSystem units)
    {
        double? metres = spots.All(spot => spot.Spot.Row is not null) ? spots.Sum(spot => spot.Spot.Row!.Value.Meters) : null;
        var (sown, newlyUp) = (seeds > 0 ? seeds : null, WatchedSpot.NewlyUp(Pooled(spots)));
        var inDays = TimingTable.InDays(spots[0].Days, newlyUp, sown, metres);
        return clock is not null && HeatVisits.Of(spots[0].Days, newlyUp, clock, units) is { } visits
            ? [.. inDays, .. TimingTable.InHeat(visits, sown, metres, units)]
            : inDays;
    }

    private static double[] Pooled(ImmutableArray<WatchedSpot> spots) =>
        [.. Enumerable.Range(0, spots[0].Days.Length).Select(visit => (double)spots.Sum(spot => spot.Up[visit]))];

    /// <summary>The clocks of strips planted on one day: the trial's method and the simple average; null without temperatures.</summary>
    private sealed record HeatClocks(HeatClock? Trial, HeatClock? Average)
    {
        public static HeatClocks Of(StripTrial trial, DateOnly planted)
        {
            return (trial.SoilTemperature ?? trial.Weather) is { } series
                ? new(By(trial.Heat.Method), By(HeatMethods.Average50))
                : new(Trial: null, Average: null);

            HeatClock By(HeatMethod method) => HeatClock.Start(series, method, planted, trial.Heat.CountPlantingDay);
        }
    }
}
