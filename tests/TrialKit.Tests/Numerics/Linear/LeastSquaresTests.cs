using TrialKit.Numerics.Linear;

namespace TrialKit.Tests.Numerics.Linear;

public class LeastSquaresTests
{
    [Fact]
    public void Fit_Norris_ReachesTheCertifiedValues()
    {
        // Certified by NIST StRD, linear regression, Norris; data lines 61 to 96 of the file.
        var rows = File.ReadLines(Path.Combine(ReferenceData.Root, "nist-linear", "Norris.dat"))
            .Skip(60)
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Where(parts => parts.Length == 2)
            .ToArray();
        Assert.Equal(36, rows.Length);

        var fit = LeastSquares.Fit(
            Design([.. rows.Select(row => new[] { ReferenceData.Number(row[1]) })]), [.. rows.Select(row => ReferenceData.Number(row[0]))]);

        Certified(fit, 0, -0.262323073774029, 0.232818234301152);
        Certified(fit, 1, 1.00211681802045, 0.429796848199937E-03);
        Close.Relative(26.6173985294224, fit.ResidualSumOfSquares, Tolerances.CertifiedRegression, "Norris, residual sum of squares");
    }

    [Fact]
    public void Fit_Longley_ReachesTheExactValues()
    {
        // Least squares in rational arithmetic on the same data (generators/longley_exact.py); NIST StRD certifies the same digits.
        var rows = ReferenceData.Csv("nist-linear/longley.csv").Select(row => row.Select(ReferenceData.Number).ToArray()).ToArray();
        Assert.Equal(16, rows.Length);

        var fit = LeastSquares.Fit(Design([.. rows.Select(row => row[1..])]), [.. rows.Select(row => row[0])]);

        Certified(fit, 0, -3482258.6345958184, 890420.38360737253);
        Certified(fit, 1, 15.061872271373295, 84.914925774766942);
        Certified(fit, 2, -0.035819179292591014, 0.033491007772243189);
        Certified(fit, 3, -2.0202298038168252, 0.48839968165169945);
        Certified(fit, 4, -1.033226867173592, 0.21427416316167527);
        Certified(fit, 5, -0.051104105653580714, 0.22607320006937037);
        Certified(fit, 6, 1829.1514646135518, 455.478499142212);
        Close.Relative(836424.05550591461, fit.ResidualSumOfSquares, Tolerances.CertifiedRegression, "Longley, residual sum of squares");
    }

    [Fact]
    public void Fit_DependentColumns_AreNamed()
    {
        var error = Assert.Throws<ArgumentException>(() => LeastSquares.Fit(
            new double[,] { { 1, 1, 2 }, { 1, 2, 4 }, { 1, 3, 6 }, { 1, 5, 10 } }, [1, 2, 3, 4]));

        Assert.Contains("independent columns were expected", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Fit_AsManyObservationsAsColumns_HasNoStandardError()
    {
        var fit = LeastSquares.Fit(new double[,] { { 1, 1 }, { 1, 2 } }, [3, 5]);

        Assert.Null(fit.StandardError(0));
        Close.Relative(2, fit.Coefficients[1], Tolerances.FewRoundings, "slope through two points");
    }

    [Fact]
    public void Fit_WrongSizesOrNaN_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => LeastSquares.Fit(new double[,] { { 1 }, { 1 } }, [1]));
        Assert.Throws<ArgumentException>(() => LeastSquares.Fit(new double[,] { { 1, 2 } }, [1]));
        Assert.Throws<ArgumentException>(() => LeastSquares.Fit(new double[,] { { 1 }, { double.NaN } }, [1, 2]));
        Assert.Throws<ArgumentException>(() => LeastSquares.Fit(new double[,] { { 1 }, { 1 } }, [1, double.NaN]));
    }

    [Theory]
    [InlineData(1e-150)]
    [InlineData(1e150)]
    public void Fit_TinyOrHugeColumn_ScalesItsCoefficient(double unit)
    {
        double[] y = [1, 3, 2, 5, 4];
        var plain = LeastSquares.Fit(Design([[1], [2], [3], [4], [5]]), y);

        var scaled = LeastSquares.Fit(Design([[1 * unit], [2 * unit], [3 * unit], [4 * unit], [5 * unit]]), y);

        Close.Relative(plain.Coefficients[1] / unit, scaled.Coefficients[1], Tolerances.FewRoundings, "slope");
        Close.Relative(plain.ResidualSumOfSquares, scaled.ResidualSumOfSquares, Tolerances.FewRoundings, "residual sum of squares");
    }

    private static void Certified(LeastSquares fit, int column, double value, double standardError)
    {
        Close.Relative(value, fit.Coefficients[column], Tolerances.CertifiedRegression, $"coefficient {column}");
        Close.Relative(standardError, fit.StandardError(column), Tolerances.CertifiedRegression, $"standard error {column}");
    }

    private static double[,] Design(double[][] predictors)
    {
        var design = new double[predictors.Length, predictors[0].Length + 1];
        for (var i = 0; i < predictors.Length; i++)
        {
            design[i, 0] = 1;
            for (var j = 0; j < predictors[i].Length; j++)
            {
                design[i, j + 1] = predictors[i][j];
            }
        }

        return design;
    }
}
