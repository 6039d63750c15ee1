using TrialKit.Cli.Output;
using TrialKit.Ingest;

namespace TrialKit.Cli.Batch;

/// <summary>Does the same work on many trials, on all cores, and hands the results on one by one in the trials' order.</summary>
/// <remarks>As many trials are under way or done and waiting as the window holds, so that memory does not grow with their number.</remarks>
internal static class BatchRun
{
    /// <summary>Trials per core that are under way or wait for an earlier one.</summary>
    private const int WindowPerCore = 4;

    /// <summary>Reads, analyses and works on each trial.</summary>
    /// <typeparam name="T">What is kept of a trial until its turn.</typeparam>
    /// <param name="trials">The trials.</param>
    /// <param name="work">Work on one, run beside others; what it needs of the analysis it takes out of it.</param>
    /// <param name="take">Takes each result in the trials' order, one at a time; the problems of the trial are printed by then.</param>
    /// <param name="terminal">Where problems and progress go.</param>
    /// <param name="withWarnings">Whether warnings of a trial without errors are printed; otherwise they are counted.</param>
    /// <returns>A line for each trial.</returns>
    public static IReadOnlyList<BatchLine> Run<T>(IReadOnlyList<NamedTrial> trials, Func<NamedTrial, TrialReading, TrialAnalysis, T> work, Action<NamedTrial, T> take, Terminal terminal, bool withWarnings = false)
    {
        var lines = new List<BatchLine>(trials.Count);
        foreach (var (line, problems, result) in InOrder(trials, trial => One(trial, work, withWarnings)))
        {
            lines.Add(line);
            terminal.Step(lines.Count, trials.Count);
            if (problems.Length > 0)
            {
                terminal.Error.Write(problems);
            }

            if (line.Status == BatchStatus.Analysed)
            {
                take(line.Trial, result!);
            }
        }

        return lines;
    }

    /// <summary>Runs work on items beside each other and yields the results in the items' order, never more than a window ahead.</summary>
    internal static IEnumerable<TResult> InOrder<TItem, TResult>(IEnumerable<TItem> items, Func<TItem, TResult> work)
    {
        var cores = Environment.ProcessorCount;
        using var gate = new SemaphoreSlim(cores);
        var window = new Queue<Task<TResult>>();
        try
        {
            foreach (var item in items)
            {
                if (window.Count == cores * WindowPerCore)
                {
                    yield return window.Dequeue().GetAwaiter().GetResult();
                }

                window.Enqueue(Task.Run(() => Gated(item)));
            }

            while (window.TryDequeue(out var next))
            {
                yield return next.GetAwaiter().GetResult();
            }
        }
        finally
        {
            // Whoever stops early still waits for what is under way: nothing is written after the command has ended.
            Task.WhenAll(window).ContinueWith(_ => { }, TaskScheduler.Default).GetAwaiter().GetResult();
        }

        TResult Gated(TItem item)
        {
            gate.Wait();
            try
            {
                return work(item);
            }
            finally
            {
                gate.Release();
            }
        }
    }

    private static (BatchLine Line, string Problems, T? Result) One<T>(NamedTrial trial, Func<NamedTrial, TrialReading, TrialAnalysis, T> work, bool withWarnings)
    {
        using var problems = new StringWriter();
        try
        {
            var reading = TrialReader.Read(trial.Folder);
            ProblemPrinter.PrintUnder(trial.Folder, reading, problems, withWarnings);
            if (reading.Trial is null or { IsPlan: true })
            {
                return (BatchLine.Of(trial, reading, analysis: null), problems.ToString(), default);
            }

            var analysis = TrialAnalysis.Of(reading.Trial);
            var result = work(trial, reading, analysis);
            return (BatchLine.Of(trial, reading, analysis), problems.ToString(), result);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            problems.WriteLine($"{trial.Folder}: {failure.Message}");
            return (BatchLine.Failed(trial), problems.ToString(), default);
        }
#pragma warning disable CA1031 // A defect met on one trial is said to be one and must not take the others' results away.
        catch (Exception defect) when (defect is not OutOfMemoryException and not UsageException)
#pragma warning restore CA1031
        {
            problems.WriteLine($"{trial.Folder}: this is a defect of the program, not of the data: {defect}");
            return (BatchLine.Failed(trial), problems.ToString(), default);
        }
    }
}
