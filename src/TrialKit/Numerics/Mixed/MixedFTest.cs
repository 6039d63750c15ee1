using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Mixed;

/// <summary>F test of several fixed combinations at once.</summary>
/// <param name="F">Mean of the squared t of independent combinations.</param>
/// <param name="NumeratorDegrees">How many combinations.</param>
/// <param name="DenominatorDegrees">Satterthwaite degrees of freedom.</param>
internal sealed record MixedFTest(double F, int NumeratorDegrees, double DenominatorDegrees)
{
    /// <summary>Chance of so large an F when all combinations are 0.</summary>
    public double P => FisherF.UpperTail(F, NumeratorDegrees, DenominatorDegrees);

    /// <summary>Degrees of freedom whose F has the mean of the averaged squared t: 2E/(E - q) with E = sum nu/(nu-2).</summary>
    /// <param name="degrees">Degrees of freedom of each t.</param>
    /// <returns>The common degrees of freedom; 2 when one of the t has no finite variance.</returns>
    /// <remarks>Fai and Cornelius 1996, J. Statist. Comput. Simul. 54:363.</remarks>
    public static double Denominator(ReadOnlySpan<double> degrees)
    {
        const double Alike = 1e-8;
        var (least, most, sum, expected) = (double.PositiveInfinity, 0.0, 0.0, 0.0);
        foreach (var nu in degrees)
        {
            least = Math.Min(least, nu);
            most = Math.Max(most, nu);
            sum += nu;
            expected += nu / (nu - 2);
        }

        return most - least < Alike * most ? sum / degrees.Length
            : least <= 2 ? 2
            : 2 * expected / (expected - degrees.Length);
    }
}
