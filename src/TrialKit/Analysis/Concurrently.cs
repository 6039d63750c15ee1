using System.Collections.Immutable;
using System.Runtime.ExceptionServices;

namespace TrialKit.Analysis;

/// <summary>Independent work shared among cores; what comes out does not depend on how many there are.</summary>
internal static class Concurrently
{
    /// <summary>Does each piece of work.</summary>
    /// <exception cref="Exception">The first that a piece of work threw, as it threw it.</exception>
    public static void Run(params Action[] work)
    {
        try
        {
            Parallel.Invoke(work);
        }
        catch (AggregateException failures)
        {
            ExceptionDispatchInfo.Throw(failures.InnerExceptions[0]);
        }
    }

    /// <summary>One result per item, in the order of the items.</summary>
    /// <exception cref="Exception">The first that an item's work threw, as it threw it.</exception>
    public static ImmutableArray<TResult> Map<T, TResult>(ImmutableArray<T> items, Func<T, TResult> work)
    {
        var results = new TResult[items.Length];
        try
        {
            Parallel.For(0, items.Length, i => results[i] = work(items[i]));
        }
        catch (AggregateException failures)
        {
            ExceptionDispatchInfo.Throw(failures.InnerExceptions[0]);
        }

        return [.. results];
    }
}
