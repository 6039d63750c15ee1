namespace TrialKit.Numerics.EventTimes;

/// <summary>The distribution of the time to emergence among the seeds that emerge; each is a location-scale family on log time.</summary>
internal enum EventTimeShape
{
    /// <summary>F0(t) = 1 / (1 + exp(-b (ln t - ln e))); e is the median.</summary>
    LogLogistic,

    /// <summary>F0(t) = Phi((ln t - ln e) / b); e is the median.</summary>
    LogNormal,

    /// <summary>F0(t) = 1 - exp(-(t / e)^b); the median is e (ln 2)^(1/b).</summary>
    Weibull,
}
