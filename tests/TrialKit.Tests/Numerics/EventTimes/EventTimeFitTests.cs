using TrialKit.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics.EventTimes;

public sealed class EventTimeFitTests
{
    public static TheoryData<string, string, double, double, double, double> Estimates => new()
    {
        // Data of the Onofri rows published; fits computed from the formula, no published value.
        { "Onofri", nameof(EventTimeShape.LogLogistic), -35.837843, 0.944363, 3.623631, 5.876365 },
        { "Onofri", nameof(EventTimeShape.LogNormal), -35.996695, 0.937787, 0.470781, 5.898741 },
        { "Onofri", nameof(EventTimeShape.Weibull), -36.613404, 0.933932, 1.965470, 7.247527 },
        { "SetA", nameof(EventTimeShape.LogLogistic), -76.366477, 0.879403, 11.144971, 8.707945 },
        { "SetA", nameof(EventTimeShape.LogNormal), -76.438104, 0.876321, 0.157783, 8.767491 },
        { "SetA", nameof(EventTimeShape.Weibull), -81.339008, 0.875046, 5.908549, 9.505441 },
    };

    public static TheoryData<string, string, double, double, double, double> Errors => new()
    {
        { "Onofri", nameof(EventTimeShape.LogLogistic), 0.0480, 0.920, 0.597, 77.6757 },
        { "Onofri", nameof(EventTimeShape.LogNormal), 0.0464, 0.101, 0.604, 77.9934 },
        { "Onofri", nameof(EventTimeShape.Weibull), 0.0456, 0.373, 0.808, 79.2268 },
        { "SetA", nameof(EventTimeShape.LogLogistic), 0.0527, 1.729, 0.237, 158.732954 },
    };

    public static TheoryData<string> Shapes => new(Enum.GetNames<EventTimeShape>());

    [Theory]
    [MemberData(nameof(Estimates))]
    public void Fit_CheckData_GivesTheEstimates(string data, string shape, double logLikelihood, double d, double b, double e)
    {
        var fit = EventTimeFit.Fit(EventCounts.Named(data), Enum.Parse<EventTimeShape>(shape));

        Agree.Absolute(logLikelihood, fit.LogLikelihood, Tolerances.LogLikelihood, $"{data} {shape} log L");
        Agree.Absolute(d, fit.D, Tolerances.PrintedToSixDecimals, $"{data} {shape} d");
        Agree.Absolute(b, fit.B, Tolerances.PrintedToSixDecimals, $"{data} {shape} b");
        Agree.Absolute(e, fit.E, Tolerances.PrintedToSixDecimals, $"{data} {shape} e");
        Assert.True(fit.Converged, $"{data} {shape} gradient {fit.GradientNorm}");
        Assert.Equal(EventTimeFlags.None, fit.Flags);
    }

    [Theory]
    [MemberData(nameof(Errors))]
    public void Fit_CheckData_GivesTheStandardErrors(string data, string shape, double ofD, double ofB, double ofE, double aic)
    {
        var fit = EventTimeFit.Fit(EventCounts.Named(data), Enum.Parse<EventTimeShape>(shape));

        Agree.Absolute(ofD, fit.StandardErrorOfD, Tolerances.PrintedToFourDecimals, $"{data} {shape} SE d");
        Agree.Absolute(ofB, fit.StandardErrorOfB, Tolerances.PrintedToThreeDecimals, $"{data} {shape} SE b");
        Agree.Absolute(ofE, fit.StandardErrorOfE, Tolerances.PrintedToThreeDecimals, $"{data} {shape} SE e");
        Agree.Absolute(aic, fit.Aic, Tolerances.PrintedToFourDecimals, $"{data} {shape} AIC");
    }

    [Theory]
    [InlineData("Onofri", -35.616729)]
    [InlineData("SetA", -73.985253)]
    [InlineData("SetAThreeVisits", -45.183367)]
    public void SaturatedLogLikelihood_CheckData_IsThatOfTheShares(string data, double expected)
    {
        var fit = EventTimeFit.Fit(EventCounts.Named(data), EventTimeShape.LogLogistic);

        Agree.Absolute(expected, fit.SaturatedLogLikelihood, Tolerances.LogLikelihood, data);
    }

    [Fact]
    public void Quantiles_Onofri_AgreeWithTheCheckValues()
    {
        var fit = EventTimeFit.Fit(EventCounts.Onofri, EventTimeShape.LogLogistic);

        NearWithError(6.0708, 0.627, fit.QuantileOfSown(0.5)!.Value, "T50 of sown");
        NearWithError(3.2046, 0.571, fit.QuantileOfEmerged(0.1)!.Value, "T10 of emerged");
        NearWithError(10.7758, 2.054, fit.QuantileOfEmerged(0.9)!.Value, "T90 of emerged");
        Agree.Absolute(7.571, fit.Spread(0.1, 0.9)?.Time, Tolerances.PrintedToThreeDecimals, "spread");
        Agree.Absolute(2.338, fit.Spread(0.1, 0.9)?.StandardError, Tolerances.PrintedToThreeDecimals, "SE of the spread");
    }

    [Fact]
    public void Quantiles_SetA_AgreeWithTheCheckValues()
    {
        var fit = EventTimeFit.Fit(EventCounts.SetA, EventTimeShape.LogLogistic);

        NearWithError(8.9263, 0.268, fit.QuantileOfSown(0.5)!.Value, "T50 of sown");
        Agree.Absolute(3.4558, fit.Spread(0.1, 0.9)?.Time, Tolerances.PrintedToFourDecimals, "spread");
        Agree.Absolute(0.558, fit.Spread(0.1, 0.9)?.StandardError, Tolerances.PrintedToThreeDecimals, "SE of the spread");
        Assert.Null(fit.QuantileOfSown(0.9));
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Fit_ThreeFreeCells_ReachesTheSaturatedModelAndSaysSo(string shape)
    {
        var fit = EventTimeFit.Fit(EventCounts.SetAThreeVisits, Enum.Parse<EventTimeShape>(shape));

        Agree.Absolute(-45.183367, fit.LogLikelihood, Tolerances.LogLikelihood, shape);
        Assert.True(fit.Flags.HasFlag(EventTimeFlags.TooFewIntervals), $"{shape} {fit.Flags}");
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void StandardErrors_AnyShape_AreThoseOfTheNumericalInformation(string name)
    {
        var shape = Enum.Parse<EventTimeShape>(name);
        var fit = EventTimeFit.Fit(EventCounts.SetA, shape);
        // The quantiles' errors again, by differencing the quantile over the working scale.
        double Quantile(double p, int which, double by)
        {
            double[] move = [0, 0, 0];
            move[which] = by;
            var d = 1.0 / (1.0 + Math.Exp(-(Math.Log(fit.D!.Value / (1.0 - fit.D.Value)) + move[0])));
            return new EventTimeCurve(shape, d, fit.B!.Value * Math.Exp(move[1]), fit.E!.Value * Math.Exp(move[2])).QuantileOfSown(p)!.Value;
        }

        const double Step = 1e-5;
        foreach (var p in new[] { 0.1, 0.5, 0.8 })
        {
            var slopes = Enumerable.Range(0, 3).Select(i => (Quantile(p, i, Step) - Quantile(p, i, -Step)) / (2.0 * Step)).ToArray();
            var variance = 0.0;
            for (var i = 0; i < 3; i++)
            {
                for (var j = 0; j < 3; j++)
                {
                    variance += slopes[i] * slopes[j] * fit.Covariance[(i * 3) + j];
                }
            }

            Agree.Relative(Math.Sqrt(variance), fit.QuantileOfSown(p)!.Value.StandardError, Tolerances.CentralDifference, $"{name} T{100 * p}");
        }
    }

    [Fact]
    public void Fit_EverySeedUp_FixesTheShareAtOneAndSaysSo()
    {
        var fit = EventTimeFit.Fit(IntervalCounts.FromVisits(EventCounts.SetATimes, EventCounts.SetANew, 0), EventTimeShape.LogLogistic);

        Assert.True(fit.Flags.HasFlag(EventTimeFlags.ShareAtBoundary));
        Assert.Equal(1.0, fit.D);
        Assert.Null(fit.StandardErrorOfD);
        Assert.NotNull(fit.StandardErrorOfE);
        Assert.Equal(2, fit.Parameters);
        Assert.True(fit.Converged);
    }

    [Fact]
    public void Fit_CurveCutOffWhileRising_IsFlagged()
    {
        var fit = EventTimeFit.Fit(IntervalCounts.FromVisits([4, 5, 6, 7, 8], [0, 1, 2, 4, 8], 60), EventTimeShape.LogLogistic);

        Assert.True(fit.Flags.HasFlag(EventTimeFlags.StillRising), fit.Flags.ToString());
    }

    [Theory]
    [InlineData("nothing up", new double[] { 0, 0, 0 }, 9.0, nameof(EventTimeFlags.NothingUp), 0.0, 0.0)]
    [InlineData("one plant", new double[] { 0, 1, 0 }, 9.0, nameof(EventTimeFlags.OnePlant), 0.1, -3.2508297339144822)]
    [InlineData("all in one", new double[] { 0, 6, 0 }, 4.0, nameof(EventTimeFlags.AllInOneInterval), 0.6, -6.730116670092565)]
    [InlineData("all at the first visit", new double[] { 6, 0, 0 }, 4.0, nameof(EventTimeFlags.AllInOneInterval), 0.6, -6.730116670092565)]
    [InlineData("all in two", new double[] { 0, 3, 3 }, 4.0, nameof(EventTimeFlags.AllInTwoIntervals), 0.6, -10.888999753452236)]
    public void Fit_NoMaximum_IsNamedAndBounded(string name, double[] newlyUp, double notUp, string flag, double share, double logLikelihood)
    {
        foreach (var shape in Enum.GetValues<EventTimeShape>())
        {
            var fit = EventTimeFit.Fit(IntervalCounts.FromVisits([4, 5, 6], newlyUp, notUp), shape);

            Assert.True(fit.Flags.HasFlag(Enum.Parse<EventTimeFlags>(flag)), $"{name} {fit.Flags}");
            Assert.Null(fit.Curve);
            Assert.Null(fit.QuantileOfEmerged(0.5));
            Agree.Relative(share, fit.D, Tolerances.ClosedForm, name);
            Agree.Relative(logLikelihood, fit.LogLikelihood, Tolerances.ClosedForm, name);
        }
    }

    [Fact]
    public void FitOfEmerged_SeedsUnknown_IsTheCurveOfThePlantsUp()
    {
        var counts = IntervalCounts.FromVisits(EventCounts.SetATimes, EventCounts.SetANew, 0);
        var fit = EventTimeFit.FitOfEmerged(counts, EventTimeShape.LogNormal);

        Assert.True(fit.Flags.HasFlag(EventTimeFlags.ShareNotEstimated));
        Assert.Equal(fit.QuantileOfEmerged(0.5), fit.QuantileOfSown(0.5));
        Assert.Equal(EventTimeFit.Fit(counts, EventTimeShape.LogNormal).LogLikelihood, fit.LogLikelihood);
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Fit_TimeInAnotherUnit_ScalesTheTimesOnly(string name)
    {
        var shape = Enum.Parse<EventTimeShape>(name);
        var days = EventTimeFit.Fit(EventCounts.SetA, shape);
        var hours = EventTimeFit.Fit(IntervalCounts.FromVisits([.. EventCounts.SetATimes.Select(t => 24.0 * t)], EventCounts.SetANew, 5), shape);

        Agree.Relative(days.LogLikelihood, hours.LogLikelihood, Tolerances.Maximised, name);
        Agree.Relative(days.B!.Value, hours.B, Tolerances.Maximised, name);
        Agree.Relative(24.0 * days.E!.Value, hours.E, Tolerances.Maximised, name);
        Agree.Relative(24.0 * days.StandardErrorOfE!.Value, hours.StandardErrorOfE, Tolerances.Maximised, name);
    }

    [Fact]
    public void Curve_LogNormalTeachingValues_Agree()
    {
        // Published teaching note by A. Onofri.
        var curve = new EventTimeCurve(EventTimeShape.LogNormal, 0.85, 0.6, 4.5);

        Agree.Absolute(5.1442, curve.QuantileOfSown(0.5), Tolerances.CutToFourDecimals, "T50 of sown");
        Agree.Absolute(5.3875, curve.MeanOfEmerged(), Tolerances.PrintedToFourDecimals, "mean of emerged");
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(1.0)]
    [InlineData(double.NaN)]
    public void Quantile_ImpossibleShare_IsRefused(double p)
    {
        var fit = EventTimeFit.Fit(EventCounts.SetA, EventTimeShape.Weibull);

        Assert.Throws<ArgumentOutOfRangeException>(() => fit.QuantileOfEmerged(p));
        Assert.Throws<ArgumentOutOfRangeException>(() => fit.QuantileOfSown(p));
    }

    private static void NearWithError(double time, double error, EventQuantile found, string what)
    {
        Agree.Absolute(time, found.Time, Tolerances.PrintedToFourDecimals, what);
        Agree.Absolute(error, found.StandardError, Tolerances.PrintedToThreeDecimals, $"SE of {what}");
    }
}
