using TrialKit.Numerics.Distributions;
using static TrialKit.Tests.ReferenceData;

namespace TrialKit.Tests.Numerics.Distributions;

/// <summary>Tails and quantiles against R's (tests/reference-data/distributions, generators/distributions.R).</summary>
public class DistributionReferenceTests
{
    [Fact]
    public void StudentT_Tails_MatchReference() => Each("student-t-tails.csv", (row, what) =>
    {
        Close.Relative(row[2], StudentT.UpperTail(row[0], row[1]), Tolerances.DistributionTail, what);
        Close.Relative(row[2], StudentT.LowerTail(-row[0], row[1]), Tolerances.DistributionTail, what);
    });

    [Fact]
    public void StudentT_Quantiles_MatchReference() => Each("student-t-quantiles.csv", (row, what) =>
    {
        Close.Relative(row[2], StudentT.UpperQuantile(row[0], row[1]), Tolerances.DistributionQuantile, what);
        Close.Relative(-row[2], StudentT.Quantile(row[0], row[1]), Tolerances.DistributionQuantile, what);
    });

    [Fact]
    public void FisherF_Tails_MatchReference() => Each("fisher-f-tails.csv", (row, what) =>
    {
        Close.Relative(row[3], FisherF.UpperTail(row[0], row[1], row[2]), Tolerances.DistributionTail, what);
        Close.Relative(row[4], FisherF.LowerTail(row[0], row[1], row[2]), Tolerances.DistributionTail, what);
    });

    [Fact]
    public void FisherF_Quantiles_MatchReference() => Each("fisher-f-quantiles.csv", (row, what) =>
        Close.Relative(row[3], FisherF.UpperQuantile(row[0], row[1], row[2]), Tolerances.DistributionQuantile, what));

    [Fact]
    public void ChiSquare_Tails_MatchReference() => Each("chi-square-tails.csv", (row, what) =>
    {
        Close.Relative(row[2], ChiSquare.UpperTail(row[0], row[1]), Tolerances.DistributionTail, what);
        Close.Relative(row[3], ChiSquare.LowerTail(row[0], row[1]), Tolerances.DistributionTail, what);
    });

    [Fact]
    public void ChiSquare_Quantiles_MatchReference() => Each("chi-square-quantiles.csv", (row, what) =>
        Close.Relative(row[2], ChiSquare.UpperQuantile(row[0], row[1]), Tolerances.DistributionQuantile, what));

    [Fact]
    public void Normal_Tails_MatchReference() => Each("normal-tails.csv", (row, what) =>
    {
        Close.Relative(row[1], Normal.UpperTail(row[0]), Tolerances.DistributionTail, what);
        Close.Relative(row[1], Normal.LowerTail(-row[0]), Tolerances.DistributionTail, what);
    });

    [Fact]
    public void Normal_Quantiles_MatchReference() => Each("normal-quantiles.csv", (row, what) =>
        Close.Relative(-row[1], Normal.Quantile(row[0]), Tolerances.DistributionTail, what));

    [Fact]
    public void Binomial_Tails_MatchReference() => Each("binomial-tails.csv", (row, what) =>
    {
        Close.Relative(row[3], Binomial.LowerTail((int)row[0], (int)row[1], row[2]), Tolerances.DistributionTail, what);
        Close.Relative(row[4], Binomial.UpperTail((int)row[0], (int)row[1], row[2]), Tolerances.DistributionTail, what);
    });

    private static void Each(string file, Action<double[], string> check)
    {
        var rows = 0;
        foreach (var row in Csv($"distributions/{file}"))
        {
            check([.. row.Select(Number)], $"{file} {string.Join(' ', row)}");
            rows++;
        }

        Assert.True(rows > 10, $"{file} holds {rows} rows");
    }
}
