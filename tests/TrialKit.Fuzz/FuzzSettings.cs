namespace TrialKit.Fuzz;

/// <summary>What is run.</summary>
/// <param name="Repository">The repository's folder.</param>
/// <param name="Seed">The seed.</param>
/// <param name="First">The number of the first case.</param>
/// <param name="Cases">How many cases.</param>
internal sealed record FuzzSettings(string Repository, long Seed, long First, long Cases)
{
    /// <summary>Only subjects whose names hold this; all when empty.</summary>
    public string Subject { get; init; } = string.Empty;

    /// <summary>One case in this many that reads is put into a report as well.</summary>
    public int ReportEvery { get; init; } = 5;

    /// <summary>The longest a case may take.</summary>
    public TimeSpan Longest { get; init; } = TimeSpan.FromSeconds(2);

    /// <summary>Cases run at the same time.</summary>
    public int Workers { get; init; } = Environment.ProcessorCount;
}
