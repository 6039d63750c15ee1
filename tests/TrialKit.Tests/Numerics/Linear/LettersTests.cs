using CsCheck;
using TrialKit.Numerics.Linear;

namespace TrialKit.Tests.Numerics.Linear;

public class LettersTests
{
    public static TheoryData<string, string, string, double> Cases()
    {
        var cases = new TheoryData<string, string, string, double>();
        foreach (var name in new[] { "soybean_seed_rcb", "rice_seeding_rcb", "plantgrowth_crd", "fabric_crd", "chickwts_crd" })
        {
            cases.Add(name, "lsd05", "p_lsd", 0.05);
            cases.Add(name, "lsd10", "p_lsd", 0.10);
            cases.Add(name, "tukey05", "p_tukey", 0.05);
            cases.Add(name, "tukey10", "p_tukey", 0.10);
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Of_PairwiseTests_AgreesWithTheReference(string name, string letters, string p, double alpha)
    {
        var trial = BlockCase.Load(name);
        var apart = trial.Values.GetProperty("pairwise").EnumerateArray()
            .Where(pair => pair.GetProperty(p).GetDouble() < alpha)
            .Select(pair => pair.GetProperty("contrast").GetString()!.Split(" - ").Select(trial.TreatmentOf).ToArray())
            .SelectMany(sides => new[] { (sides[0], sides[1]), (sides[1], sides[0]) })
            .ToHashSet();
        var means = trial.Treatments.Select(treatment => trial.Number("means", treatment)).ToArray();

        var result = Letters.Of(means, (i, j) => apart.Contains((i, j)));

        foreach (var expected in trial.Values.GetProperty("cld").GetProperty(letters).EnumerateObject())
        {
            Assert.True(
                expected.Value.GetString() == result[trial.TreatmentOf(expected.Name)],
                $"{trial.Name}, {letters}, {expected.Name}: {result[trial.TreatmentOf(expected.Name)]} was computed, {expected.Value} was expected.");
        }
    }

    [Fact]
    public void Of_AnyRelation_SharesALetterExactlyWhereNoDifferenceWasShown()
    {
        Gen.Select(Gen.Int[1, 9], Gen.Int[0, int.MaxValue]).Sample(
            (count, seed) =>
            {
                var random = new Random(seed);
                var means = Enumerable.Range(0, count).Select(_ => (double)random.Next(5)).ToArray();
                var apart = new bool[count, count];
                for (var i = 0; i < count; i++)
                {
                    for (var j = i + 1; j < count; j++)
                    {
                        apart[i, j] = random.Next(2) == 0;
                    }
                }

                var letters = Letters.Of(means, (i, j) => apart[i, j]);

                for (var i = 0; i < count; i++)
                {
                    Assert.NotEmpty(letters[i]);
                    for (var j = i + 1; j < count; j++)
                    {
                        Assert.Equal(apart[i, j], !letters[i].Intersect(letters[j]).Any());
                    }
                }
            },
            iter: 500);
    }

    [Fact]
    public void Of_MeanThatIsNotANumber_IsRefused() =>
        Assert.Throws<ArgumentException>(() => Letters.Of([1, double.NaN], (_, _) => false));
}
