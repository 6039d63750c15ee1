using TrialKit.Cli.Batch;

namespace TrialKit.Cli.Tests.Batch;

/// <summary>Work on many items beside each other.</summary>
public class BatchRunTests
{
    [Fact]
    public void InOrder_WorkOfUnequalLength_ComesInTheItemsOrder()
    {
        var results = BatchRun.InOrder(Enumerable.Range(0, 60), item =>
        {
            Thread.Sleep(item % 7 == 0 ? 12 : 0);
            return item * item;
        });

        Assert.Equal(Enumerable.Range(0, 60).Select(item => item * item), results);
    }

    [Fact]
    public void InOrder_ManyItems_NeverRunsFarAhead()
    {
        var (begun, furthest, taken) = (0, 0, 0);
        foreach (var _ in BatchRun.InOrder(Enumerable.Range(0, 500), item => Interlocked.Increment(ref begun)))
        {
            furthest = Math.Max(furthest, Volatile.Read(ref begun) - taken);
            taken++;
        }

        Assert.Equal(500, taken);
        Assert.InRange(furthest, 1, (Environment.ProcessorCount * 4) + 1);
    }

    [Fact]
    public void InOrder_StoppedEarly_WaitsForWhatIsUnderWay()
    {
        var (begun, ended) = (0, 0);
        foreach (var _ in BatchRun.InOrder(Enumerable.Range(0, 100), Work))
        {
            break;
        }

        Assert.Equal(Volatile.Read(ref begun), Volatile.Read(ref ended));

        int Work(int item)
        {
            Interlocked.Increment(ref begun);
            Thread.Sleep(5);
            return Interlocked.Increment(ref ended);
        }
    }
}
