using TrialKit.Numerics.Distributions;

namespace TrialKit.Numerics.Linear;

/// <summary>Where a line of an analysis of variance comes from.</summary>
internal enum VarianceSource
{
    /// <summary>Between blocks.</summary>
    Blocks,

    /// <summary>Between treatments or groups.</summary>
    Treatments,

    /// <summary>What blocks and treatments leave; within groups in a one-way analysis.</summary>
    Error,
}

/// <summary>Whether F exists, and if not, why.</summary>
internal enum FStatus
{
    /// <summary>F exists.</summary>
    Defined,

    /// <summary>All observations are equal.</summary>
    NoVariation,

    /// <summary>Blocks and treatments explain every observation to rounding.</summary>
    NoErrorVariation,

    /// <summary>No observation is left to measure error.</summary>
    NoErrorDegrees,

    /// <summary>The line itself has no degree of freedom: one block, or one treatment.</summary>
    NoEffectDegrees,
}

/// <summary>A line of an analysis of variance: sum of squares, degrees of freedom, and what follows from them.</summary>
/// <param name="Source">What the line measures.</param>
/// <param name="SumOfSquares">Sum of squares, in squared units of the response.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom, 0 or more.</param>
/// <param name="F">Mean square over error mean square; null on the error line and where <paramref name="Status"/> says why.</param>
/// <param name="ErrorDegreesOfFreedom">Degrees of freedom of the denominator of F.</param>
/// <param name="Status">Whether F exists; on the error line, whether it can be a denominator.</param>
internal sealed record VarianceLine(
    VarianceSource Source, double SumOfSquares, int DegreesOfFreedom, double? F, int ErrorDegreesOfFreedom, FStatus Status)
{
    /// <summary>Sum of squares by degrees of freedom; null without degrees of freedom.</summary>
    public double? MeanSquare => DegreesOfFreedom > 0 ? SumOfSquares / DegreesOfFreedom : null;

    /// <summary>Chance of so large an F when the line has no effect; null where F is.</summary>
    public double? P => F is { } f ? FisherF.UpperTail(f, DegreesOfFreedom, ErrorDegreesOfFreedom) : null;

    /// <summary>The table's lines: effects first, error last, each effect tested against error.</summary>
    /// <param name="effects">Source, sum of squares and degrees of freedom of each effect.</param>
    /// <param name="errorSumOfSquares">Error sum of squares.</param>
    /// <param name="errorDegrees">Error degrees of freedom.</param>
    /// <param name="errorStatus">Whether error can be a denominator.</param>
    /// <returns>One line per effect, then error.</returns>
    public static VarianceLine[] Table(
        ReadOnlySpan<(VarianceSource Source, double SumOfSquares, int Degrees)> effects,
        double errorSumOfSquares,
        int errorDegrees,
        FStatus errorStatus)
    {
        var lines = new VarianceLine[effects.Length + 1];
        for (var i = 0; i < effects.Length; i++)
        {
            var (source, sum, degrees) = effects[i];
            var status = errorStatus == FStatus.Defined && degrees == 0 ? FStatus.NoEffectDegrees : errorStatus;
            double? f = status == FStatus.Defined ? sum / degrees / (errorSumOfSquares / errorDegrees) : null;
            lines[i] = new VarianceLine(source, sum, degrees, f, errorDegrees, status);
        }

        lines[^1] = new VarianceLine(VarianceSource.Error, errorSumOfSquares, errorDegrees, F: null, errorDegrees, errorStatus);
        return lines;
    }

    /// <summary>Whether an error sum of squares can be a denominator.</summary>
    /// <param name="total">Total sum of squares about the mean.</param>
    /// <param name="error">Error sum of squares.</param>
    /// <param name="errorDegrees">Error degrees of freedom.</param>
    /// <param name="observations">The observations as they came, for the size of their rounding.</param>
    /// <returns><see cref="FStatus.Defined"/> or the reason why not.</returns>
    public static FStatus Denominator(double total, double error, int errorDegrees, ReadOnlySpan<double> observations) =>
        errorDegrees == 0 ? FStatus.NoErrorDegrees
        : StableSums.IsRounding(total, observations) ? FStatus.NoVariation
        : StableSums.IsRounding(error, observations) ? FStatus.NoErrorVariation
        : FStatus.Defined;
}
