using System.Text.Json;
using TrialKit.Numerics.EventTimes;

namespace TrialKit.Tests.Numerics.EventTimes;

public sealed class PooledEventTimeFitTests
{
    public static TheoryData<string, string> Shapes => new()
    {
        { "loglogistic", nameof(EventTimeShape.LogLogistic) },
        { "lognormal", nameof(EventTimeShape.LogNormal) },
        { "weibull", nameof(EventTimeShape.Weibull) },
    };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Fit_Cosmesis_GivesTheReferenceEffect(string name, string shape)
    {
        var (left, right, group) = ReferenceIntervals.Rows(ReferenceIntervals.Cosmesis, "treat");
        EventTimeCluster[] arms =
        [
            new(ReferenceIntervals.Where(left, right, i => group[i] == "Rad"), [0.0]),
            new(ReferenceIntervals.Where(left, right, i => group[i] == "RadChem"), [1.0]),
        ];
        var expected = ReferenceIntervals.Cosmesis.GetProperty("values").GetProperty("survreg").GetProperty(name);
        var fit = PooledEventTimeFit.Fit(arms, Enum.Parse<EventTimeShape>(shape), PooledEffects.Location, shareFixed: true);

        Agree.Absolute(expected.GetProperty("loglik").GetDouble(), fit.LogLikelihood, Tolerances.LogLikelihood, $"{name} log L");
        var effect = fit.EffectOn(PooledEffects.Location, 0)!.Value;
        Agree.Absolute(expected.GetProperty("coef").GetProperty("treatRadChem").GetDouble(), effect.Value, Tolerances.ReferenceEffect, $"{name} effect");
        Agree.Absolute(expected.GetProperty("se").GetProperty("treatRadChem").GetDouble(), effect.SeedStandardError, Tolerances.ReferenceEffect, $"{name} SE");
        Agree.Absolute(expected.GetProperty("se").GetProperty("Log(scale)").GetDouble(), fit.InterceptOf(PooledEffects.Slope)?.SeedStandardError, Tolerances.ReferenceEffect, $"{name} SE of ln b");
        Agree.Absolute(expected.GetProperty("median").GetProperty("RadChem").GetDouble(), fit.CurveAt([1.0])?.QuantileOfEmerged(0.5), 100.0 * Tolerances.ReferenceEffect, $"{name} median");
        Assert.True(fit.Converged);

        var none = PooledEventTimeFit.Fit(arms, Enum.Parse<EventTimeShape>(shape), PooledEffects.None, shareFixed: true);
        Agree.Absolute(expected.GetProperty("loglik_null").GetDouble(), none.LogLikelihood, Tolerances.LogLikelihood, $"{name} log L without effect");
        Assert.Null(none.EffectOn(PooledEffects.Location, 0));
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Fit_ClusteredStrips_GivesTheReferenceSandwich(string name, string shape)
    {
        var expected = ReferenceIntervals.Clustered.GetProperty("values").GetProperty("survreg").GetProperty(name);
        var fit = PooledEventTimeFit.Fit(Strips(), Enum.Parse<EventTimeShape>(shape), PooledEffects.Location, shareFixed: true);
        // Sandwich from differences of the likelihood: survreg's own robust variance has a wrong sign in it for interval-censored rows (see the generator).
        var robust = ReferenceData.Csv("interval-censored/clustered_sandwich.csv").Single(row => row[0] == name).Skip(1).Select(ReferenceData.Number).ToArray();

        Agree.Absolute(expected.GetProperty("loglik").GetDouble(), fit.LogLikelihood, Tolerances.LogLikelihood, $"{name} log L");
        Check(fit.EffectOn(PooledEffects.Location, 0), expected.GetProperty("coef").GetProperty("trtB"), expected.GetProperty("se_naive").GetProperty("trtB"), robust[1], $"{name} effect");
        Check(fit.InterceptOf(PooledEffects.Location), expected.GetProperty("coef").GetProperty("(Intercept)"), expected.GetProperty("se_naive").GetProperty("(Intercept)"), robust[0], $"{name} intercept");
        Agree.Absolute(robust[2], fit.InterceptOf(PooledEffects.Slope)?.StripStandardError, Tolerances.ReferenceEffect, $"{name} robust SE of ln b");
        var b = Math.Exp(fit.InterceptOf(PooledEffects.Slope)!.Value.Value);
        Agree.Absolute(expected.GetProperty("scale").GetDouble(), shape == nameof(EventTimeShape.LogNormal) ? b : 1.0 / b, Tolerances.ReferenceEffect, $"{name} scale");
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Fit_EveryPartFreeByGroup_IsTheSeparateFits(string name, string shape)
    {
        var kind = Enum.Parse<EventTimeShape>(shape);
        EventTimeCluster[] groups = [new(EventCounts.SetA, [0.0]), new(EventCounts.Onofri, [1.0])];
        var fit = PooledEventTimeFit.Fit(groups, kind, PooledEffects.Location | PooledEffects.Slope | PooledEffects.Share, shareFixed: false);
        var (first, second) = (EventTimeFit.Fit(EventCounts.SetA, kind), EventTimeFit.Fit(EventCounts.Onofri, kind));

        Agree.Absolute(first.LogLikelihood + second.LogLikelihood, fit.LogLikelihood, Tolerances.LogLikelihood, $"{name} log L");
        var (one, two) = (fit.CurveAt([0.0])!.Value, fit.CurveAt([1.0])!.Value);
        Agree.Relative(first.D!.Value, one.D, Tolerances.Maximised, $"{name} d of the first");
        Agree.Relative(first.B!.Value, one.B, Tolerances.Maximised, $"{name} b of the first");
        Agree.Relative(second.D!.Value, two.D, Tolerances.Maximised, $"{name} d of the second");
        Agree.Relative(second.B!.Value, two.B, Tolerances.Maximised, $"{name} b of the second");
        Agree.Relative(second.E!.Value, two.E, Tolerances.Maximised, $"{name} e of the second");
        Agree.Relative(Math.Log(second.B.Value / first.B.Value), fit.EffectOn(PooledEffects.Slope, 0)?.Value, Tolerances.Maximised, $"{name} effect on ln b");
        var variance = Math.Pow(first.StandardErrorOfE!.Value / first.E!.Value, 2) + Math.Pow(second.StandardErrorOfE!.Value / second.E.Value, 2);
        Agree.Relative(Math.Sqrt(variance), fit.EffectOn(PooledEffects.Location, 0)?.SeedStandardError, Tolerances.RefittedError, $"{name} SE of the effect on ln e");
    }

    [Fact]
    public void Fit_GroupsExchanged_TurnsTheSign()
    {
        var strips = Strips();
        EventTimeCluster[] exchanged = [.. strips.Select(s => s with { Covariates = [1.0 - s.Covariates[0]] })];
        var fit = PooledEventTimeFit.Fit(strips, EventTimeShape.LogNormal, PooledEffects.Location, shareFixed: false).EffectOn(PooledEffects.Location, 0)!.Value;
        var back = PooledEventTimeFit.Fit(exchanged, EventTimeShape.LogNormal, PooledEffects.Location, shareFixed: false).EffectOn(PooledEffects.Location, 0)!.Value;

        Agree.Relative(fit.Value, -back.Value, Tolerances.Maximised, "effect");
        Agree.Relative(fit.StripStandardError!.Value, back.StripStandardError, Tolerances.RefittedError, "strip SE");
    }

    [Fact]
    public void Fit_OneGroupAllUp_DropsTheEffectOnTheShareAndSaysSo()
    {
        EventTimeCluster[] groups =
        [
            new(IntervalCounts.FromVisits([5, 6, 7, 8], [2, 9, 6, 3], 0), [0.0]),
            new(IntervalCounts.FromVisits([5, 6, 7, 8], [1, 5, 7, 2], 5), [1.0]),
        ];
        var fit = PooledEventTimeFit.Fit(groups, EventTimeShape.LogLogistic, PooledEffects.Location | PooledEffects.Share, shareFixed: false);

        Assert.True(fit.Flags.HasFlag(EventTimeFlags.ShareEffectDropped), fit.Flags.ToString());
        Assert.True(fit.Converged);
        Assert.NotNull(fit.EffectOn(PooledEffects.Location, 0));
        Assert.Null(fit.EffectOn(PooledEffects.Share, 0));
    }

    [Fact]
    public void Fit_NothingUp_GivesNoEffect()
    {
        var fit = PooledEventTimeFit.Fit([new(IntervalCounts.FromVisits([5, 6], [0, 0], 5), [0.0])], EventTimeShape.Weibull, PooledEffects.Location, shareFixed: false);

        Assert.True(fit.Flags.HasFlag(EventTimeFlags.NothingUp));
        Assert.Null(fit.EffectOn(PooledEffects.Location, 0));
        Assert.Null(fit.CurveAt([0.0]));
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void ClusterSandwich_OneCurve_IsThatOfThePooledFit(string name, string shape)
    {
        var kind = Enum.Parse<EventTimeShape>(shape);
        var strips = Strips();
        var counts = IntervalCounts.Merge(strips.Select(s => s.Counts));
        var single = EventTimeFit.Fit(counts, kind).ClusterSandwich([.. strips.Select(s => s.Counts)]);
        var pooled = PooledEventTimeFit.Fit(strips, kind, PooledEffects.None, shareFixed: false);

        Agree.Relative(pooled.InterceptOf(PooledEffects.Location)!.Value.StripStandardError!.Value, single.StandardErrorOfE / single.E, Tolerances.RefittedError, $"{name} ln e");
        Agree.Relative(pooled.InterceptOf(PooledEffects.Slope)!.Value.StripStandardError!.Value, single.StandardErrorOfB / single.B, Tolerances.RefittedError, $"{name} ln b");
        Assert.NotNull(single.QuantileOfEmerged(0.5)?.StandardError);
    }

    [Fact]
    public void Fit_ImpossibleInput_IsRefused()
    {
        EventTimeCluster good = new(EventCounts.SetA, [0.0]);
        Assert.Throws<ArgumentException>(() => PooledEventTimeFit.Fit([], EventTimeShape.Weibull, PooledEffects.None, shareFixed: false));
        Assert.Throws<ArgumentException>(() => PooledEventTimeFit.Fit([good], EventTimeShape.Weibull, PooledEffects.Share, shareFixed: true));
        Assert.Throws<ArgumentException>(() => PooledEventTimeFit.Fit([good, good with { Covariates = [] }], EventTimeShape.Weibull, PooledEffects.None, shareFixed: false));
        Assert.Throws<ArgumentException>(() => PooledEventTimeFit.Fit([good with { Covariates = [double.NaN] }], EventTimeShape.Weibull, PooledEffects.None, shareFixed: false));
        Assert.Throws<ArgumentException>(() => EventTimeFit.Fit(EventCounts.SetA, EventTimeShape.Weibull).ClusterSandwich([EventCounts.SetA, EventCounts.Onofri]));
    }

    private static EventTimeCluster[] Strips()
    {
        var (left, right, strip) = ReferenceIntervals.Rows(ReferenceIntervals.Clustered, "strip");
        var (_, _, treatment) = ReferenceIntervals.Rows(ReferenceIntervals.Clustered, "trt");
        return [.. strip.Distinct(StringComparer.Ordinal).Select(s => new EventTimeCluster(ReferenceIntervals.Where(left, right, i => strip[i] == s), [treatment[Array.IndexOf(strip, s)] == "B" ? 1.0 : 0.0]))];
    }

    private static void Check(PooledEffect? effect, JsonElement value, JsonElement bySeed, double byStrip, string what)
    {
        Agree.Absolute(value.GetDouble(), effect?.Value, Tolerances.ReferenceEffect, what);
        Agree.Absolute(bySeed.GetDouble(), effect?.SeedStandardError, Tolerances.ReferenceEffect, $"{what} SE by seed");
        Agree.Absolute(byStrip, effect?.StripStandardError, Tolerances.ReferenceEffect, $"{what} SE by strip");
    }
}
