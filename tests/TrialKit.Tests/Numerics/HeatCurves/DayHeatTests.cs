using CsCheck;
using TrialKit.Numerics.HeatCurves;

namespace TrialKit.Tests.Numerics.HeatCurves;

public sealed class DayHeatTests
{
    private static readonly Gen<(double Minimum, double Maximum, double Next, double Lower, double Upper)> Day = Gen.Select(
        Gen.Double[-20, 40], Gen.Frequency((9, Gen.Double[0, 30]), (1, Gen.Const(0.0))), Gen.Double[-20, 40], Gen.Double[-5, 20], Gen.Double[0, 25],
        (minimum, swing, next, lower, width) => (minimum, minimum + swing, next, lower, lower + width));

    // Thermometer readings: the vertical cut-off jumps on a day without a swing, so values must not merge when converted.
    private static readonly Gen<(double Minimum, double Maximum, double Lower, double Upper)> DayInTenths = Gen.Select(
        Gen.Int[-200, 400], Gen.Int[0, 300], Gen.Int[-50, 200], Gen.Int[0, 250],
        (minimum, swing, lower, width) => (0.1 * minimum, 0.1 * (minimum + swing), 0.1 * lower, 0.1 * (lower + width)));

    public static TheoryData<double, double, string, double, double, double, double> Singles => new()
    {
        // L 50, U 86 F: minimum, maximum, shape, then none, horizontal, intermediate, vertical. Computed from the formula, no published value.
        { 40, 48, nameof(DayShape.Sine), 0, 0, 0, 0 },
        { 40, 48, nameof(DayShape.Triangle), 0, 0, 0, 0 },
        { 55, 80, nameof(DayShape.Sine), 17.5, 17.5, 17.5, 17.5 },
        { 55, 80, nameof(DayShape.Triangle), 17.5, 17.5, 17.5, 17.5 },
        { 88, 92, nameof(DayShape.Sine), 40, 36, 32, 0 },
        { 88, 92, nameof(DayShape.Triangle), 40, 36, 32, 0 },
        { 40, 70, nameof(DayShape.Sine), 7.5424, 7.5424, 7.5424, 7.5424 },
        { 40, 70, nameof(DayShape.Triangle), 6.6667, 6.6667, 6.6667, 6.6667 },
        { 60, 95, nameof(DayShape.Sine), 27.5, 25.5086, 23.5171, 13.3204 },
        { 60, 95, nameof(DayShape.Triangle), 27.5, 26.3429, 25.1857, 17.0857 },
        { 40, 95, nameof(DayShape.Sine), 19.3447, 17.7728, 16.2010, 8.2284 },
        { 40, 95, nameof(DayShape.Triangle), 18.4091, 17.6727, 16.9364, 11.7818 },
    };

    [Theory]
    [MemberData(nameof(Singles))]
    public void Single_CheckDay_GivesTheValue(double minimum, double maximum, string shape, double none, double horizontal, double intermediate, double vertical)
    {
        double[] expected = [none, horizontal, intermediate, vertical];
        foreach (var cutOff in Enum.GetValues<CutOff>())
        {
            var found = DayHeat.Single(Enum.Parse<DayShape>(shape), cutOff, minimum, maximum, 50, 86, floored: false);
            Agree.Absolute(expected[(int)cutOff], found, Tolerances.PrintedToFourDecimals, $"{minimum}/{maximum} {shape} {cutOff}");
        }
    }

    [Theory]
    [InlineData(nameof(DayShape.Sine), 23.4224, 21.6407, 19.8590, 10.7744)]
    [InlineData(nameof(DayShape.Triangle), 22.9545, 22.0078, 21.0610, 14.4338)]
    public void Double_CheckDay_GivesTheValue(string shape, double none, double horizontal, double intermediate, double vertical)
    {
        double[] expected = [none, horizontal, intermediate, vertical];
        foreach (var cutOff in Enum.GetValues<CutOff>())
        {
            var found = DayHeat.Double(Enum.Parse<DayShape>(shape), cutOff, 40, 95, 60, 50, 86, floored: false);
            Agree.Absolute(expected[(int)cutOff], found, Tolerances.PrintedToFourDecimals, $"{shape} {cutOff}");
        }
    }

    [Theory]
    // Corn heat units in F as printed by Purdue and by an extension column, but 55/90, 88/90 and 30/45, computed.
    [InlineData(55, 80, 17.5)]
    [InlineData(65, 90, 25.5)]
    [InlineData(46, 72, 11)]
    [InlineData(42, 63, 6.5)]
    [InlineData(55, 90, 20.5)]
    [InlineData(88, 90, 36)]
    [InlineData(30, 45, 0)]
    public void ExtremesClipped_CornDays_GiveThePrintedUnits(double minimum, double maximum, double expected) =>
        Agree.Absolute(expected, DayHeat.ExtremesClipped(minimum, maximum, 50, 86), Tolerances.ClosedForm, $"{minimum}/{maximum}");

    [Theory]
    [InlineData(-5, 7, 0, 1.0, 3.5)]
    [InlineData(5, 25, 10, 5.0, 7.5)]
    public void Clipped_TheTwoWays_DifferAsTheyShould(double minimum, double maximum, double lower, double ofMean, double ofExtremes)
    {
        Agree.Absolute(ofMean, DayHeat.MeanClipped(minimum, maximum, lower, double.PositiveInfinity), Tolerances.ClosedForm, "mean");
        Agree.Absolute(ofMean, DayHeat.SimpleAverage(minimum, maximum, lower), Tolerances.ClosedForm, "simple average");
        Agree.Absolute(ofExtremes, DayHeat.ExtremesClipped(minimum, maximum, lower, double.PositiveInfinity), Tolerances.ClosedForm, "extremes");
    }

    [Theory]
    [InlineData(10, 25, 20.565, 20.565)]
    [InlineData(18, 32, 28.542, 28.542)]
    [InlineData(-2, 15, 7.275, 1.515)]
    public void CropHeatUnits_CheckDays_GiveTheValue(double minimum, double maximum, double floored, double raw)
    {
        Agree.Absolute(floored, DayHeat.CropHeatUnits(minimum, maximum, floored: true), Tolerances.ClosedForm, "floored");
        Agree.Absolute(raw, DayHeat.CropHeatUnits(minimum, maximum, floored: false), Tolerances.ClosedForm, "raw");
    }

    [Fact]
    public void Hourly_HalfADayEach_GivesTheValue() =>
        Agree.Absolute(23.0, DayHeat.Hourly([.. Enumerable.Repeat(60.0, 12), .. Enumerable.Repeat(90.0, 12)], 50, 86), Tolerances.ClosedForm, "12 h at 60 F, 12 h at 90 F");

    [Fact]
    public void Single_RandomDays_IsTheIntegralOfTheCurve() =>
        Day.Sample(
            d =>
            {
                foreach (var shape in Enum.GetValues<DayShape>())
                {
                    foreach (var cutOff in Enum.GetValues<CutOff>())
                    {
                        var expected = Integral(shape, cutOff, d.Minimum, d.Maximum, d.Lower, d.Upper, 0.0, 1.0);
                        var found = DayHeat.Single(shape, cutOff, d.Minimum, d.Maximum, d.Lower, d.Upper, floored: false);
                        Agree.Absolute(expected, found, Tolerances.Quadrature, $"{shape} {cutOff} {d}");
                    }
                }
            },
            iter: 10_000);

    [Fact]
    public void UpTo_RandomDays_IsTheIntegralOfTheCurveSoFar() =>
        Gen.Select(Day, Gen.Double[0, 1]).Sample(
            (d, fraction) =>
            {
                foreach (var shape in Enum.GetValues<DayShape>())
                {
                    foreach (var cutOff in Enum.GetValues<CutOff>())
                    {
                        var expected = 0.5 * Integral(shape, cutOff, d.Minimum, d.Maximum, d.Lower, d.Upper, 0.0, Math.Min(1.0, 2.0 * fraction));
                        if (fraction > 0.5)
                        {
                            expected += 0.5 * Integral(shape, cutOff, d.Maximum, d.Next, d.Lower, d.Upper, 0.0, (2.0 * fraction) - 1.0);
                        }

                        var found = DayHeat.UpTo(shape, cutOff, d.Minimum, d.Maximum, d.Next, d.Lower, d.Upper, fraction);
                        Agree.Absolute(expected, found, Tolerances.Quadrature, $"{shape} {cutOff} {d} at {fraction:R}");
                    }
                }
            },
            iter: 2000);

    [Fact]
    public void UpTo_WholeDay_IsTheDoubleOrTheSingleCurve() =>
        Day.Sample(
            d =>
            {
                foreach (var shape in Enum.GetValues<DayShape>())
                {
                    foreach (var cutOff in Enum.GetValues<CutOff>())
                    {
                        Agree.Absolute(DayHeat.Double(shape, cutOff, d.Minimum, d.Maximum, d.Next, d.Lower, d.Upper, floored: false), DayHeat.UpTo(shape, cutOff, d.Minimum, d.Maximum, d.Next, d.Lower, d.Upper, 1.0), Tolerances.Quadrature, $"{shape} {cutOff} {d} double");
                        Agree.Absolute(DayHeat.Single(shape, cutOff, d.Minimum, d.Maximum, d.Lower, d.Upper, floored: false), DayHeat.UpTo(shape, cutOff, d.Minimum, d.Maximum, d.Minimum, d.Lower, d.Upper, 1.0), Tolerances.Quadrature, $"{shape} {cutOff} {d} single");
                    }
                }
            },
            iter: 2000);

    [Fact]
    public void Single_CutOffs_NeverRiseFromNoneToVertical() =>
        Day.Sample(
            d =>
            {
                foreach (var shape in Enum.GetValues<DayShape>())
                {
                    double Heat(CutOff cutOff, bool floored) => DayHeat.Single(shape, cutOff, d.Minimum, d.Maximum, d.Lower, d.Upper, floored);
                    Assert.True(Heat(CutOff.None, false) >= Heat(CutOff.Horizontal, false) - Tolerances.Quadrature, $"{shape} {d} none, horizontal");
                    Assert.True(Heat(CutOff.Horizontal, false) >= Heat(CutOff.Intermediate, true) - Tolerances.Quadrature, $"{shape} {d} horizontal, intermediate");
                    Assert.True(Heat(CutOff.Intermediate, true) >= Heat(CutOff.Intermediate, false) - Tolerances.Quadrature, $"{shape} {d} floored, not floored");
                    Assert.True(Heat(CutOff.Intermediate, true) >= -Tolerances.Quadrature, $"{shape} {d} floored below 0");
                    Assert.True(Heat(CutOff.Horizontal, false) >= Heat(CutOff.Vertical, false) - Tolerances.Quadrature, $"{shape} {d} horizontal, vertical");
                    Assert.True(Heat(CutOff.Vertical, false) >= 0.0, $"{shape} {d} vertical below 0");
                }
            },
            iter: 5000);

    [Fact]
    public void EveryMethod_InFahrenheit_IsNineFifthsOfCelsius() =>
        DayInTenths.Sample(
            d =>
            {
                static double F(double c) => (1.8 * c) + 32.0;
                void Same(double celsius, double fahrenheit, string what) => Agree.Absolute(1.8 * celsius, fahrenheit, Tolerances.Quadrature, $"{what} {d}");
                Same(DayHeat.SimpleAverage(d.Minimum, d.Maximum, d.Lower), DayHeat.SimpleAverage(F(d.Minimum), F(d.Maximum), F(d.Lower)), "simple");
                Same(DayHeat.MeanClipped(d.Minimum, d.Maximum, d.Lower, d.Upper), DayHeat.MeanClipped(F(d.Minimum), F(d.Maximum), F(d.Lower), F(d.Upper)), "mean clipped");
                Same(DayHeat.ExtremesClipped(d.Minimum, d.Maximum, d.Lower, d.Upper), DayHeat.ExtremesClipped(F(d.Minimum), F(d.Maximum), F(d.Lower), F(d.Upper)), "extremes clipped");
                foreach (var shape in Enum.GetValues<DayShape>())
                {
                    foreach (var cutOff in Enum.GetValues<CutOff>())
                    {
                        Same(
                            DayHeat.Single(shape, cutOff, d.Minimum, d.Maximum, d.Lower, d.Upper, floored: true),
                            DayHeat.Single(shape, cutOff, F(d.Minimum), F(d.Maximum), F(d.Lower), F(d.Upper), floored: true),
                            $"{shape} {cutOff}");
                    }
                }
            },
            iter: 5000);

    [Theory]
    [InlineData("maximum below minimum", 20, 10, 5, 30)]
    [InlineData("a minimum that is no number", double.NaN, 10, 5, 30)]
    [InlineData("an infinite maximum", 0, double.PositiveInfinity, 5, 30)]
    [InlineData("upper threshold below lower", 10, 20, 30, 5)]
    [InlineData("a threshold that is no number", 10, 20, double.NaN, 30)]
    [InlineData("an upper threshold that is no number", 10, 20, 5, double.NaN)]
    public void EveryMethod_ImpossibleDay_IsRefused(string name, double minimum, double maximum, double lower, double upper)
    {
        Assert.NotEmpty(name);
        Assert.ThrowsAny<ArgumentException>(() => DayHeat.ExtremesClipped(minimum, maximum, lower, upper));
        Assert.ThrowsAny<ArgumentException>(() => DayHeat.MeanClipped(minimum, maximum, lower, upper));
        Assert.ThrowsAny<ArgumentException>(() => DayHeat.Single(DayShape.Sine, CutOff.None, minimum, maximum, lower, upper, floored: false));
        Assert.ThrowsAny<ArgumentException>(() => DayHeat.UpTo(DayShape.Sine, CutOff.None, minimum, maximum, minimum, lower, upper, 0.5));
    }

    [Fact]
    public void UpTo_FractionOutsideTheDay_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DayHeat.UpTo(DayShape.Sine, CutOff.None, 10, 20, 10, 5, 30, 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => DayHeat.UpTo(DayShape.Sine, CutOff.None, 10, 20, 10, 5, 30, double.NaN));
        Assert.Throws<ArgumentException>(() => DayHeat.Hourly([], 5, 30));
    }

    // Gauss-Legendre with 20 nodes on each piece between the moments where the integrand bends, which it finds by bisection on the curve itself.
    private static double Integral(DayShape shape, CutOff cutOff, double begin, double end, double lower, double upper, double from, double to)
    {
        double Temperature(double x) => begin + ((end - begin) * (shape == DayShape.Triangle ? x : 0.5 * (1.0 - Math.Cos(Math.PI * x))));
        double Rate(double x, double middle)
        {
            var t = Temperature(x);
            var (below, above) = (Temperature(middle) <= lower, Temperature(middle) > upper);
            return below ? 0.0
                : !above ? t - lower
                : cutOff switch
                {
                    CutOff.None => t - lower,
                    CutOff.Horizontal => upper - lower,
                    CutOff.Intermediate => (2.0 * upper) - lower - t,
                    _ => 0.0,
                };
        }

        double[] cuts = [from, .. new[] { lower, upper }.Select(level => Where(shape, begin, end, level)).Where(x => x > from && x < to).Order(), to];
        var sum = 0.0;
        for (var i = 0; i + 1 < cuts.Length; i++)
        {
            var middle = 0.5 * (cuts[i] + cuts[i + 1]);
            sum += MathNet.Numerics.Integration.GaussLegendreRule.Integrate(x => Rate(x, middle), cuts[i], cuts[i + 1], 20);
        }

        return sum;
    }

    // Compares shares of the swing measured from the nearer end, so that a level at an extreme is met exactly.
    private static double Where(DayShape shape, double begin, double end, double level)
    {
        var (done, left) = ((level - begin) / (end - begin), (end - level) / (end - begin));
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 200; i++)
        {
            var x = 0.5 * (low + high);
            var passed = shape == DayShape.Triangle ? x >= done
                : x < 0.5 ? Math.Pow(Math.Sin(0.5 * Math.PI * x), 2) >= done
                : Math.Pow(Math.Sin(0.5 * Math.PI * (1.0 - x)), 2) <= left;
            (low, high) = passed ? (low, x) : (x, high);
        }

        return 0.5 * (low + high);
    }
}
