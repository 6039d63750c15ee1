using System.Globalization;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Glm;

/// <summary>F test of a smaller model within a larger one, the larger one's dispersion as error.</summary>
/// <param name="F">Difference of deviances by its degrees of freedom and the dispersion; null where <see cref="Status"/> or a dispersion of nil forbids it.</param>
/// <param name="NumeratorDegrees">Degrees of freedom of the difference.</param>
/// <param name="DenominatorDegrees">Degrees of freedom of the dispersion.</param>
/// <param name="Status">How the worse of the two fits ended.</param>
/// <remarks>McCullagh and Nelder 1989, section 4.5.</remarks>
internal sealed record QuasiFTest(double? F, int NumeratorDegrees, int DenominatorDegrees, GlmStatus Status)
{
    /// <summary>Chance of so large an F when the smaller model holds; null where F is.</summary>
    public double? P => F is { } f ? FisherF.UpperTail(f, NumeratorDegrees, DenominatorDegrees) : null;

    /// <summary>Compares two fits of the same counts.</summary>
    /// <param name="smaller">The smaller model, its columns among those of the larger.</param>
    /// <param name="larger">The larger model.</param>
    /// <returns>The test.</returns>
    /// <exception cref="ArgumentException">The models do not nest: no fewer columns, or another number of observations.</exception>
    public static QuasiFTest Of(GlmFit smaller, GlmFit larger)
    {
        var degrees = larger.Columns - smaller.Columns;
        if (degrees < 1 || smaller.DegreesOfFreedom - larger.DegreesOfFreedom != degrees)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"A model of {smaller.Columns} columns and {smaller.DegreesOfFreedom} degrees of freedom was set within one of {larger.Columns} and {larger.DegreesOfFreedom}; fewer columns on as many observations were expected."),
                nameof(smaller));
        }

        var status = larger.Status != GlmStatus.Converged ? larger.Status : smaller.Status;
        double? f = status == GlmStatus.Converged && larger.Dispersion is { } dispersion && dispersion > 0
            ? (smaller.Deviance - larger.Deviance) / degrees / dispersion
            : null;
        return new QuasiFTest(f, degrees, larger.DegreesOfFreedom, status);
    }
}
