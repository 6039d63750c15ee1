namespace TrialKit.Numerics.EventTimes;

/// <summary>Counts that a curve fits ever better as it steepens to a step, so that no maximum exists.</summary>
/// <remarks>
/// This is so when some moment t lies in, or at an end of, every event's interval: the latest left end is not after the earliest right end.
/// A step of height d at t then gives the events all of d, or splits it between the intervals that end and that begin at t, and no curve does better.
/// </remarks>
/// <param name="Kind">The flag of the case, or none where the search may begin.</param>
/// <param name="LogLikelihood">The least upper bound of the log-likelihood.</param>
internal readonly record struct StepLimit(EventTimeFlags Kind, double LogLikelihood)
{
    /// <summary>With the share estimated.</summary>
    public static StepLimit WithShare(IntervalCounts counts)
    {
        if (counts.Events == 0.0)
        {
            return new StepLimit(EventTimeFlags.NothingUp, 0.0);
        }

        double latestLeft = 0.0, earliestRight = double.PositiveInfinity, latestRight = 0.0;
        for (var i = 0; i < counts.Length; i++)
        {
            if (!double.IsPositiveInfinity(counts.Right[i]))
            {
                latestLeft = Math.Max(latestLeft, counts.Left[i]);
                earliestRight = Math.Min(earliestRight, counts.Right[i]);
                latestRight = Math.Max(latestRight, counts.Right[i]);
            }
        }

        if (latestLeft > earliestRight)
        {
            return default;
        }

        var oneInterval = latestLeft < earliestRight;
        var waiting = 0.0;
        for (var i = 0; i < counts.Length; i++)
        {
            if (!double.IsPositiveInfinity(counts.Right[i]))
            {
                continue;
            }

            var last = counts.Left[i];
            if (last >= latestRight)
            {
                waiting += counts.Count[i];
            }
            else if (oneInterval ? last > latestLeft : last >= latestLeft)
            {
                // Last looked at among the events: where the step goes matters to it, and a search must weigh that.
                return default;
            }
        }

        var watched = counts.Events + waiting;
        var share = TimesLogShare(counts.Events, watched) + TimesLogShare(waiting, watched);
        return oneInterval
            ? new StepLimit(EventTimeFlags.AllInOneInterval, share)
            : new StepLimit(EventTimeFlags.AllInTwoIntervals, share + SplitAt(counts, latestLeft, eventsOnly: true));
    }

    /// <summary>With the share fixed at 1, when seeds not yet up are events still to come.</summary>
    public static StepLimit AtShareOne(IntervalCounts counts)
    {
        if (counts.Events == 0.0)
        {
            return new StepLimit(EventTimeFlags.NothingUp, 0.0);
        }

        double latestLeft = 0.0, earliestRight = double.PositiveInfinity;
        for (var i = 0; i < counts.Length; i++)
        {
            latestLeft = Math.Max(latestLeft, counts.Left[i]);
            earliestRight = Math.Min(earliestRight, counts.Right[i]);
        }

        return latestLeft > earliestRight ? default
            : latestLeft < earliestRight ? new StepLimit(EventTimeFlags.AllInOneInterval, 0.0)
            : new StepLimit(EventTimeFlags.AllInTwoIntervals, SplitAt(counts, latestLeft, eventsOnly: false));
    }

    private static double SplitAt(IntervalCounts counts, double moment, bool eventsOnly)
    {
        double before = 0.0, after = 0.0;
        for (var i = 0; i < counts.Length; i++)
        {
            if (!eventsOnly || !double.IsPositiveInfinity(counts.Right[i]))
            {
                before += counts.Right[i] == moment ? counts.Count[i] : 0.0;
                after += counts.Left[i] == moment ? counts.Count[i] : 0.0;
            }
        }

        return TimesLogShare(before, before + after) + TimesLogShare(after, before + after);
    }

    private static double TimesLogShare(double n, double total) => n == 0.0 ? 0.0 : n * Math.Log(n / total);
}
