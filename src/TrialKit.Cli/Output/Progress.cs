using System.Diagnostics;
using System.Globalization;

namespace TrialKit.Cli.Output;

/// <summary>Says what is being done once it has taken more than a second; quick runs print nothing.</summary>
internal sealed class Progress(TextWriter writer) : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(2);
    private readonly Stopwatch sinceSaid = Stopwatch.StartNew();
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

    /// <summary>Says how many of many are done, every other second.</summary>
    public void Step(int done, int all)
    {
        lock (gate)
        {
            if (sinceSaid.Elapsed >= Pause)
            {
                sinceSaid.Restart();
                writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{done} of {all} trials ..."));
                writer.Flush();
            }
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
