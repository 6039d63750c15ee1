namespace TrialKit.Numerics.EventTimes;

/// <summary>What a reader of an event-time fit must know before trusting it.</summary>
[Flags]
internal enum EventTimeFlags
{
    /// <summary>No doubt was found.</summary>
    None = 0,

    /// <summary>The share that ever emerges ran to 1; the fit reported has it fixed at 1.</summary>
    ShareAtBoundary = 1,

    /// <summary>The share was fixed at 1 by the caller, as it must be when the seeds sown are unknown.</summary>
    ShareNotEstimated = 2,

    /// <summary>Every event can have happened at one moment inside one interval: neither location nor spread can be estimated.</summary>
    AllInOneInterval = 4,

    /// <summary>Every event lies in two intervals that meet at one visit: the steeper the curve the better, so spread cannot be estimated.</summary>
    AllInTwoIntervals = 8,

    /// <summary>Free cells (distinct occupied intervals less one) do not exceed the parameters: the shape cannot be tested.</summary>
    TooFewIntervals = 16,

    /// <summary>More than one in twenty of those that will emerge are expected after the last visit.</summary>
    StillRising = 32,

    /// <summary>No event was seen.</summary>
    NothingUp = 64,

    /// <summary>One event was seen.</summary>
    OnePlant = 128,

    /// <summary>The observed information is not positive definite: no standard errors.</summary>
    InformationSingular = 256,

    /// <summary>The gradient did not reach zero.</summary>
    NotConverged = 512,

    /// <summary>The effect of the covariates on the share could not be estimated, because a share ran to 1; one share was fitted to all.</summary>
    ShareEffectDropped = 1024,
}
