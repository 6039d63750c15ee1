using CsCheck;
using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Tests.Figures;

public class LabelSpreadTests
{
    [Fact]
    public void Places_AnyWishes_AreApartInOrderAndWithinTheRoom() =>
        Gen.Double[-50, 150].Array[1, 9].Sample(wishes =>
        {
            var places = LabelSpread.Places(wishes, 10, 0, 100);
            var order = Enumerable.Range(0, wishes.Length).OrderBy(i => wishes[i]).Select(i => places[i]).ToArray();
            return order.Zip(order.Skip(1)).All(pair => pair.Second - pair.First >= 10 - 1e-9)
                && order[0] >= -1e-9
                && order[^1] <= 100 + 1e-9;
        });

    [Fact]
    public void Places_WishesFarApart_AreGranted() => Assert.Equal([70, 20, 45], LabelSpread.Places([70, 20, 45], 10, 0, 100));

    [Fact]
    public void Places_WishesThatMeet_AreMovedEvenly() => Assert.Equal([45, 55], LabelSpread.Places([50, 50], 10, 0, 100));

    [Fact]
    public void Places_MoreThanFit_ShareTheRoom() =>
        Assert.Equal([0, 5, 10], LabelSpread.Places([3, 3, 3], 10, 0, 10));

    [Fact]
    public void Places_None_AreNone() => Assert.Empty(LabelSpread.Places([], 10, 0, 100));
}
