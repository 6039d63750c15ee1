namespace TrialKit.Numerics.EventTimes;

/// <summary>A time to a share of the seeds, judged on the log scale where its error is nearer to symmetric.</summary>
/// <param name="Time">The estimate.</param>
/// <param name="LogStandardError">Standard error of its log by the delta method; null without a usable information matrix.</param>
internal readonly record struct EventQuantile(double Time, double? LogStandardError)
{
    /// <summary>Standard error on the scale of time, by the delta method.</summary>
    public double? StandardError => Time * LogStandardError;

    /// <summary>exp(ln T -+ critical x SE of ln T), null without a standard error.</summary>
    /// <param name="critical">Two-sided critical value of the reference distribution, above 0.</param>
    public (double Lower, double Upper)? IntervalAt(double critical)
    {
        if (!(critical > 0.0) || double.IsPositiveInfinity(critical))
        {
            throw new ArgumentOutOfRangeException(nameof(critical), critical, "Found a critical value that is not finite and above 0.");
        }

        return LogStandardError is { } se ? (Time * Math.Exp(-critical * se), Time * Math.Exp(critical * se)) : null;
    }
}

/// <summary>The time between two quantiles of those that emerge.</summary>
/// <param name="Time">The estimate.</param>
/// <param name="StandardError">By the delta method; null without a usable information matrix.</param>
internal readonly record struct EventSpread(double Time, double? StandardError);
