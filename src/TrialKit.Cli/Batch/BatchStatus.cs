namespace TrialKit.Cli.Batch;

/// <summary>What became of a trial of several; the weightier the later.</summary>
internal enum BatchStatus
{
    /// <summary>It was analysed.</summary>
    Analysed,

    /// <summary>It is a plan: nothing has been measured yet.</summary>
    Plan,

    /// <summary>Its data have errors.</summary>
    DataErrors,

    /// <summary>The program failed on it: a file that cannot be read or written, or a defect.</summary>
    Failed,
}
