using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Mixed;

/// <summary>A linear combination of fixed coefficients.</summary>
/// <param name="Estimate">Its estimate.</param>
/// <param name="StandardError">Its standard error; null where the fit has none.</param>
/// <param name="DegreesOfFreedom">Satterthwaite degrees of freedom; null where the fit has none.</param>
internal sealed record MixedContrast(double Estimate, double? StandardError, double? DegreesOfFreedom)
{
    /// <summary>Estimate by standard error.</summary>
    public double? T => Estimate / StandardError;

    /// <summary>Two-sided chance of so large a t.</summary>
    public double? P => T is { } t && DegreesOfFreedom is { } df ? 2 * StudentT.LowerTail(-Math.Abs(t), df) : null;
}
