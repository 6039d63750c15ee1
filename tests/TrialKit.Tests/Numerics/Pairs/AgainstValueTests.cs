using TrialKit.Numerics;
using TrialKit.Numerics.Pairs;

namespace TrialKit.Tests.Numerics.Pairs;

public class AgainstValueTests
{
    [Fact]
    public void EquivalenceAndProbability_PairedCases_MatchReference()
    {
        foreach (var (name, d, values) in PairCases.All())
        {
            var mean = Summary.Mean(d);
            var error = Summary.StandardDeviation(d) / Math.Sqrt(d.Length);
            var margin = values.Number("tost", "delta");
            var result = AgainstValue.Equivalence(mean, error, d.Length - 1, -margin, margin);
            Close.Relative(values.Number("tost", "t_lower"), result.TLower, Tolerances.ClosedForm, name);
            Close.Relative(values.Number("tost", "p_lower"), result.PLower, Tolerances.ClosedForm, name);
            Close.Relative(values.Number("tost", "t_upper"), result.TUpper, Tolerances.ClosedForm, name);
            Close.Relative(values.Number("tost", "p_upper"), result.PUpper, Tolerances.ClosedForm, name);
            Close.Relative(values.Number("tost", "p"), result.P, Tolerances.ClosedForm, name);

            var value = values.Number("prob_exceeds_breakeven", "breakeven");
            Close.Relative(values.Number("prob_exceeds_breakeven", "p"), AgainstValue.ProbabilityAbove(mean, error, d.Length - 1, value), Tolerances.ClosedForm, name);
        }
    }

    [Fact]
    public void ProbabilityAbove_WorkedCase_MatchesFivePlaces() =>
        Close.Absolute(0.92167, AgainstValue.ProbabilityAbove(3.2, 2.5 / Math.Sqrt(6), 5, 1.5), Tolerances.Printed(5), "computed from the formula");

    [Fact]
    public void Equivalence_SwappedSign_SwapsTheTests()
    {
        var one = AgainstValue.Equivalence(1.2, 0.7, 5, -2, 3);
        var other = AgainstValue.Equivalence(-1.2, 0.7, 5, -3, 2);
        Assert.Equal((one.PLower, one.PUpper), (other.PUpper, other.PLower));
    }

    [Fact]
    public void Procedures_ImpossibleInput_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => AgainstValue.Equivalence(1, 0, 5, -1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgainstValue.Equivalence(1, 1, 5, 1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => AgainstValue.ProbabilityAbove(double.NaN, 1, 5, 0));
    }
}
