using TrialKit.Analysis;

namespace TrialKit.Tests.Analysis;

public class ConcurrentlyTests
{
    [Fact]
    public void Map_ManyItems_KeepsTheirOrder() =>
        Assert.Equal(Enumerable.Range(0, 500).Select(i => i * i), Concurrently.Map([.. Enumerable.Range(0, 500)], i => i * i));

    [Fact]
    public void Map_WorkThatFails_ThrowsWhatTheWorkThrew() =>
        Assert.Throws<InvalidDataException>(() => Concurrently.Map<int, int>([1, 2, 3], _ => throw new InvalidDataException("bad")));

    [Fact]
    public void Run_WorkThatFails_ThrowsWhatTheWorkThrewAfterTheRest()
    {
        var done = 0;

        Assert.Throws<InvalidDataException>(() => Concurrently.Run(() => Interlocked.Increment(ref done), () => throw new InvalidDataException("bad"), () => Interlocked.Increment(ref done)));
        Assert.Equal(2, done);
    }
}
