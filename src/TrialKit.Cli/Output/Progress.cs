namespace TrialKit.Cli.Output;

/// <summary>Says what is being done once it has taken more than a second; quick runs print nothing.</summary>
internal sealed class Progress(TextWriter writer) : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private readonly Lock gate = new();
    private Timer? timer;
    private string current = "";

    /// <summary>Names the step that begins now.</summary>
    public void Step(string doing)
    {
        lock (gate)
        {
            current = doing;
            timer?.Dispose();
            timer = new Timer(_ => Say(doing), state: null, Patience, Timeout.InfiniteTimeSpan);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (gate)
        {
            timer?.Dispose();
            timer = null;
            current = "";
        }
    }

    private void Say(string doing)
    {
        lock (gate)
        {
            if (ReferenceEquals(doing, current))
            {
                writer.WriteLine($"{doing} ...");
                writer.Flush();
            }
        }
    }
}
