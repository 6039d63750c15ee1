namespace TrialKit.Numerics.EventTimes;

/// <summary>log(H(zR) - H(zL)) of a standard distribution H at z = s (ln t - ln e), with its derivatives in u = ln s and v = ln e.</summary>
/// <remarks>Every form is arranged so that neither short intervals nor far tails cancel. An open left end has zL = -inf, an open right end zR = +inf.</remarks>
/// <param name="Value">The log of the mass.</param>
/// <param name="U">First derivative in u.</param>
/// <param name="V">First derivative in v.</param>
/// <param name="UU">Second derivative in u.</param>
/// <param name="UV">Mixed derivative.</param>
/// <param name="VV">Second derivative in v.</param>
internal readonly record struct LogMass(double Value, double U, double V, double UU, double UV, double VV)
{
    /// <summary>The mass of (L, R] under a shape.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="s">Slope on log time, above 0.</param>
    /// <param name="zLeft">s (ln L - ln e).</param>
    /// <param name="zRight">s (ln R - ln e).</param>
    /// <param name="width">zRight - zLeft computed without cancellation.</param>
    public static LogMass Of(EventTimeShape shape, double s, double zLeft, double zRight, double width) => shape switch
    {
        EventTimeShape.LogLogistic => Logistic(s, zLeft, zRight, width),
        EventTimeShape.LogNormal => Normal(s, zLeft, zRight, width),
        EventTimeShape.Weibull => Gumbel(s, zLeft, zRight, width),
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "Found an unknown shape; expected log-logistic, log-normal or Weibull."),
    };

    // H(zR) - H(zL) = H(zR) (1 - H(zL)) (1 - exp(-width)): three factors, none of which cancels.
    private static LogMass Logistic(double s, double zLeft, double zRight, double width)
    {
        double f = 0, u = 0, v = 0, uu = 0, uv = 0, vv = 0;
        if (!double.IsPositiveInfinity(zRight))
        {
            var over = StableMath.Logistic(-zRight);
            var w = over * StableMath.Logistic(zRight);
            f += StableMath.LogLogistic(zRight);
            u += zRight * over;
            v -= s * over;
            uu += (zRight * over) - (zRight * zRight * w);
            uv += s * ((w * zRight) - over);
            vv -= s * s * w;
        }

        if (!double.IsNegativeInfinity(zLeft))
        {
            var under = StableMath.Logistic(zLeft);
            var w = under * StableMath.Logistic(-zLeft);
            f += StableMath.LogLogistic(-zLeft);
            u -= zLeft * under;
            v += s * under;
            uu -= (zLeft * under) + (zLeft * zLeft * w);
            uv += s * (under + (w * zLeft));
            vv -= s * s * w;
        }

        if (!double.IsPositiveInfinity(width))
        {
            var (q1, q2) = Log1MExpSlopes(width);
            f += StableMath.Log1MExp(width);
            u += width * q1;
            uu += (width * q1) + (width * width * q2);
        }

        return new LogMass(f, u, v, uu, uv, vv);
    }

    // With a = exp(zL), c = exp(zR): exp(-a) - exp(-c) = exp(-a) (1 - exp(-(c - a))) and c - a = a (exp(width) - 1).
    private static LogMass Gumbel(double s, double zLeft, double zRight, double width)
    {
        double a = 0, au = 0, auu = 0, auv = 0;
        if (!double.IsNegativeInfinity(zLeft))
        {
            a = Math.Exp(zLeft);
            au = zLeft * a;
            auu = au * (1.0 + zLeft);
            auv = -s * a * (1.0 + zLeft);
        }

        if (double.IsPositiveInfinity(zRight))
        {
            return new LogMass(-a, -au, s * a, -auu, -auv, -s * s * a);
        }

        // Derivatives of the difference d = c - a, written with d itself so that a short interval keeps its digits.
        var open = double.IsNegativeInfinity(zLeft);
        var c = Math.Exp(zRight);
        var d = open ? c : -c * StableMath.ExpM1(-width);
        var aw = open ? 0.0 : a * width;
        var du = (zRight * d) + aw;
        var dv = -s * d;
        var duu = (zRight * (1.0 + zRight) * d) + (open ? 0.0 : aw * (1.0 + zRight + zLeft));
        var duv = -s * (((1.0 + zRight) * d) + aw);
        var dvv = s * s * d;
        var (r1, r2) = Log1MExpSlopes(d);
        return new LogMass(
            StableMath.Log1MExp(d) - a,
            (r1 * du) - au,
            (r1 * dv) + (s * a),
            (r1 * duu) + (r2 * du * du) - auu,
            (r1 * duv) + (r2 * du * dv) - auv,
            (r1 * dvv) + (r2 * dv * dv) - (s * s * a));
    }

    private static LogMass Normal(double s, double zLeft, double zRight, double width)
    {
        if (double.IsPositiveInfinity(zRight))
        {
            var mills = Math.Exp(StableMath.LogNormalDensity(zLeft) - StableMath.LogNormalCdf(-zLeft));
            return OfOneEnd(StableMath.LogNormalCdf(-zLeft), s, zLeft, -mills, -mills * (mills - zLeft));
        }

        if (double.IsNegativeInfinity(zLeft))
        {
            var mills = Math.Exp(StableMath.LogNormalDensity(zRight) - StableMath.LogNormalCdf(zRight));
            return OfOneEnd(StableMath.LogNormalCdf(zRight), s, zRight, mills, -mills * (mills + zRight));
        }

        var middle = zLeft + (0.5 * width);
        if (width * Math.Max(1.0, Math.Abs(middle)) < 0.05)
        {
            return NarrowNormal(s, middle, width);
        }

        // Measured from the nearer tail, where both tails are small and their difference keeps its digits.
        var (near, far) = middle > 0.0 ? (-zLeft, -zRight) : (zRight, zLeft);
        var logNear = StableMath.LogNormalCdf(near);
        var f = logNear + StableMath.Log1MExp(logNear - StableMath.LogNormalCdf(far));
        var rR = Math.Exp(StableMath.LogNormalDensity(zRight) - f);
        var rL = Math.Exp(StableMath.LogNormalDensity(zLeft) - f);
        var rr = -rR * (zRight + rR);
        var ll = rL * (zLeft - rL);
        var rl = rR * rL;
        var u = (zRight * rR) - (zLeft * rL);
        var v = -s * (rR - rL);
        return new LogMass(
            f,
            u,
            v,
            (rr * zRight * zRight) + (ll * zLeft * zLeft) + (2.0 * rl * zRight * zLeft) + u,
            (-s * ((rr * zRight) + (ll * zLeft) + (rl * (zRight + zLeft)))) + v,
            s * s * (rr + ll + (2.0 * rl)));
    }

    // Density at the midpoint times width times 1 + w^2 (m^2 - 1)/24 + w^4 (m^4 - 6 m^2 + 3)/1920; the next term is below 1e-13.
    private static LogMass NarrowNormal(double s, double m, double w)
    {
        var (m2, w2) = (m * m, w * w);
        var h4 = (m2 * m2) - (6.0 * m2) + 3.0;
        var c = 1.0 + (w2 * (m2 - 1.0) / 24.0) + (w2 * w2 * h4 / 1920.0);
        // Derivatives of c in m, and by w d/dw, divided by c.
        var cm = ((w2 * m / 12.0) + (w2 * w2 * ((m2 * m) - (3.0 * m)) / 480.0)) / c;
        var cmm = ((w2 / 12.0) + (w2 * w2 * (m2 - 1.0) / 160.0)) / c;
        var cw = ((w2 * (m2 - 1.0) / 12.0) + (w2 * w2 * h4 / 480.0)) / c;
        var cww = ((w2 * (m2 - 1.0) / 6.0) + (w2 * w2 * h4 / 120.0)) / c;
        var cmw = ((w2 * m / 6.0) + (w2 * w2 * ((m2 * m) - (3.0 * m)) / 120.0)) / c;
        var fm = cm - m;
        var fmm = cmm - (cm * cm) - 1.0;
        var fmw = cmw - (cm * cw);
        return new LogMass(
            StableMath.LogNormalDensity(m) + Math.Log(w) + Math.Log(c),
            (m * fm) + 1.0 + cw,
            -s * fm,
            (m * fm) + (m2 * fmm) + (2.0 * m * fmw) + cww - (cw * cw),
            -s * (fm + (m * fmm) + fmw),
            s * s * fmm);
    }

    private static LogMass OfOneEnd(double f, double s, double z, double first, double second) =>
        new(f, first * z, -s * first, (second * z * z) + (first * z), -s * ((second * z) + first), s * s * second);

    // First and second derivatives of log(1 - exp(-x)).
    private static (double First, double Second) Log1MExpSlopes(double x)
    {
        var grow = StableMath.ExpM1(x);
        return (1.0 / grow, 1.0 / (grow * StableMath.ExpM1(-x)));
    }
}
