using TrialKit.Numerics;
using TrialKit.Numerics.Glm;
using TrialKit.Numerics.Linear;

namespace TrialKit.Tests.Numerics.Glm;

public class GlmDesignTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Weigh_BlocksAndTreatments_AgreesWithOneFactorOfTheWhole(ulong seed)
    {
        var stream = new RandomStream(seed);
        var design = BlocksAndTreatments(blocks: 7, treatments: 4);
        var rows = design.GetLength(0);
        double[] roots = [.. Enumerable.Range(0, rows).Select(_ => 0.2 + stream.NextDouble())];
        double[] values = [.. Enumerable.Range(0, rows).Select(_ => stream.NextDouble())];
        double[] combination = [.. Enumerable.Range(0, design.GetLength(1)).Select(_ => stream.NextDouble() - 0.5)];
        var whole = new double[rows, design.GetLength(1)];
        for (var i = 0; i < rows; i++)
        {
            for (var j = 0; j < design.GetLength(1); j++)
            {
                whole[i, j] = roots[i] * design[i, j];
            }
        }

        var factor = PivotedQr.Factor(whole);
        var expected = factor.Solve(factor.Rotate(values));
        var inverse = factor.InverseCrossProduct();
        var variance = Enumerable.Range(0, combination.Length).Sum(i => Enumerable.Range(0, combination.Length).Sum(j => combination[i] * inverse[i, j] * combination[j]));

        var weighted = GlmDesign.Of(design).Weigh(roots);
        var found = weighted.Solve([.. values]);

        Close.Relative(variance, weighted.Variance(combination), Tolerances.ClosedForm, "variance of a combination");
        for (var j = 0; j < expected.Length; j++)
        {
            Close.Relative(expected[j], found[j], Tolerances.ClosedForm, $"coefficient {j}");
        }
    }

    [Fact]
    public void DependentColumns_SumOfBlocksAndOfOthers_AreFound()
    {
        var independent = BlocksAndTreatments(blocks: 3, treatments: 3);
        var design = new double[independent.GetLength(0), independent.GetLength(1) + 2];
        for (var i = 0; i < design.GetLength(0); i++)
        {
            for (var j = 0; j < independent.GetLength(1); j++)
            {
                design[i, j] = independent[i, j];
            }

            // One column that the blocks make up, and one that a treatment and a block do.
            design[i, 5] = 1;
            design[i, 6] = (2 * design[i, 3]) + design[i, 1];
        }

        Assert.Empty(GlmDesign.Of(independent).DependentColumns());
        var dependent = GlmDesign.Of(design).DependentColumns();

        Assert.Equal(2, dependent.Count);
        Assert.Contains(5, dependent);
        Assert.True(dependent.Contains(3) || dependent.Contains(6), string.Join(", ", dependent));
    }

    private static double[,] BlocksAndTreatments(int blocks, int treatments)
    {
        var design = new double[blocks * treatments, blocks + treatments - 1];
        for (var i = 0; i < design.GetLength(0); i++)
        {
            design[i, i / treatments] = 1;
            if (i % treatments > 0)
            {
                design[i, blocks + (i % treatments) - 1] = 1;
            }
        }

        return design;
    }
}
