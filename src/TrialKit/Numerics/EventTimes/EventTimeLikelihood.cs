namespace TrialKit.Numerics.EventTimes;

/// <summary>Log-likelihood of grouped interval-censored counts under F(t) = d F0(t), with gradient and Hessian in (a, u, v) = (logit d, ln s, ln e).</summary>
/// <remarks>log L = sum n_j log(F(R_j) - F(L_j)) + sum n_c log(1 - F(C)). With the share fixed at 1 the derivatives in a are zero.</remarks>
internal static class EventTimeLikelihood
{
    /// <summary>Parameters of the curve.</summary>
    public const int Parameters = 3;

    /// <summary>Adds the derivatives of the log-likelihood at a point to the gradient (3) and Hessian (3 x 3, row major).</summary>
    /// <returns>The log-likelihood; not finite where the parameters cannot have given the counts.</returns>
    public static double Accumulate(IntervalCounts counts, EventTimeShape shape, bool shareFixed, double a, double u, double v, Span<double> gradient, Span<double> hessian)
    {
        var s = Math.Exp(u);
        var d = StableMath.Logistic(a);
        var never = StableMath.Logistic(-a);
        double f = 0, ga = 0, gu = 0, gv = 0, haa = 0, hau = 0, hav = 0, huu = 0, huv = 0, hvv = 0;
        var left = counts.LogLeft;
        var right = counts.LogRight;
        var ratio = counts.LogRatio;
        var count = counts.Count;
        for (var i = 0; i < count.Length; i++)
        {
            var n = count[i];
            var open = double.IsPositiveInfinity(right[i]);
            var zLeft = s * (left[i] - v);
            if (open && double.IsNegativeInfinity(zLeft))
            {
                // A seed looked at only at planting says nothing.
                continue;
            }

            if (open && !shareFixed)
            {
                // S = (1 - d) + d (1 - H) is a sum of positive terms, so nothing cancels.
                var h = ShapeFunctions.Density(shape, zLeft);
                var cdf = ShapeFunctions.Cdf(shape, zLeft);
                var survival = never + (d * ShapeFunctions.UpperTail(shape, zLeft));
                var slope = ShapeFunctions.DensityLogSlope(shape, zLeft);
                var dh = h == 0.0 ? 0.0 : d * h / survival;
                var sa = -d * never * cdf / survival;
                var (su, sv) = (-dh * zLeft, dh * s);
                var bend = h == 0.0 ? 0.0 : dh * slope;
                f += n * Math.Log(survival);
                ga += n * sa;
                gu += n * su;
                gv += n * sv;
                haa += n * ((sa * (1.0 - (2.0 * d))) - (sa * sa));
                hau += n * ((su * never) - (sa * su));
                hav += n * ((sv * never) - (sa * sv));
                huu += n * ((-bend * zLeft * zLeft) + su - (su * su));
                huv += n * ((bend * zLeft * s) + sv - (su * sv));
                hvv += n * ((-bend * s * s) - (sv * sv));
                continue;
            }

            var mass = LogMass.Of(shape, s, zLeft, s * (right[i] - v), s * ratio[i]);
            f += n * mass.Value;
            gu += n * mass.U;
            gv += n * mass.V;
            huu += n * mass.UU;
            huv += n * mass.UV;
            hvv += n * mass.VV;
            if (!shareFixed)
            {
                f += n * StableMath.LogLogistic(a);
                ga += n * never;
                haa -= n * d * never;
            }
        }

        gradient[0] += ga;
        gradient[1] += gu;
        gradient[2] += gv;
        hessian[0] += haa;
        hessian[1] += hau;
        hessian[2] += hav;
        hessian[3] += hau;
        hessian[4] += huu;
        hessian[5] += huv;
        hessian[6] += hav;
        hessian[7] += huv;
        hessian[8] += hvv;
        return f;
    }

    /// <summary>Robust starting values (a, u, v): shrunken share, and the moments of the log midpoints of the events.</summary>
    public static (double A, double U, double V) Start(IntervalCounts counts, EventTimeShape shape)
    {
        double sum = 0, squares = 0;
        var left = counts.LogLeft;
        var right = counts.LogRight;
        var count = counts.Count;
        for (var i = 0; i < count.Length; i++)
        {
            if (!double.IsPositiveInfinity(right[i]))
            {
                var m = Middle(left[i], right[i]);
                sum += count[i] * m;
                squares += count[i] * m * m;
            }
        }

        var mean = sum / counts.Events;
        var sd = Math.Sqrt(Math.Max(0.0, (squares / counts.Events) - (mean * mean)));
        var s = ShapeFunctions.StandardDeviation(shape) / Math.Clamp(sd, 0.03, 3.0);
        var share = (counts.Events + 0.5) / (counts.Total + 1.0);
        return (Math.Log(share / (1.0 - share)), Math.Log(s), mean - (ShapeFunctions.Mean(shape) / s));
    }

    private static double Middle(double logLeft, double logRight) =>
        double.IsNegativeInfinity(logLeft) ? logRight - Math.Log(2.0) : 0.5 * (logLeft + logRight);
}
