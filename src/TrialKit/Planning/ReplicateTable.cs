using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;
using TrialKit.Numerics.Power;
using TrialKit.Quantities;

namespace TrialKit.Planning;

/// <summary>How many pairs or blocks a trial needs.</summary>
/// <remarks>
/// The two-sided t test of the difference of two treatments by the noncentral t distribution (Lenth 1989, Appl. Statist. 38:185-189, AS 243):
/// its standard error is sqrt(2) CV / sqrt(replicates), with (treatments - 1)(replicates - 1) degrees of freedom. With three treatments or
/// more the difference is one of a treatment from the control and must pass the critical value of Dunnett's two-sided test (1955, J. Amer.
/// Statist. Assoc. 50:1096-1121), as it is judged.
/// </remarks>
/// <param name="cv">Spread of a strip within its block, in percent of the mean, above 0.</param>
/// <param name="treatments">Treatments, 2 or more.</param>
/// <param name="level">The level of the test.</param>
/// <param name="power">The chance asked, above half the level and below 1.</param>
public sealed class ReplicateTable(double cv, int treatments, ConfidenceLevel level, double power)
{
    // The critical value of several comparisons is a search over a double integral: each is found once.
    private readonly Dictionary<int, double> alphas = [];

    /// <summary>The most replicates that are looked at.</summary>
    public const int Most = 10_000;

    /// <summary>Spread of a strip within its block, in percent of the mean.</summary>
    public double Cv { get; } = Guard.Positive(cv, "coefficient of variation, %");

    /// <summary>Treatments.</summary>
    public int Treatments { get; } = treatments >= 2 ? treatments : throw new ArgumentOutOfRangeException(nameof(treatments), treatments, "Two treatments or more were expected.");

    /// <summary>The level of the test.</summary>
    public ConfidenceLevel Level { get; } = level;

    /// <summary>The chance asked.</summary>
    public double Power { get; } = power > level.Alpha / 2 && power < 1
        ? power
        : throw new ArgumentOutOfRangeException(nameof(power), power, "A power above half the level and below 1 was expected.");

    /// <summary>The smallest p that the exact test can give, since it counts the ways in which treatments could have been laid out: (treatments!)^(1 - replicates).</summary>
    /// <param name="treatments">Treatments, 2 or more.</param>
    /// <param name="replicates">Pairs or blocks, 1 or more.</param>
    public static double SmallestExactP(int treatments, int replicates)
    {
        Checks.AtLeast(treatments, 2);
        Checks.AtLeast(replicates, 1);
        var orders = 1.0;
        for (var i = 2; i <= treatments; i++)
        {
            orders *= i;
        }

        return Math.Pow(orders, 1 - replicates);
    }

    /// <summary>What so many replicates can show.</summary>
    /// <param name="replicates">Pairs or blocks, 2 or more.</param>
    /// <param name="difference">A difference to ask about, in percent of the mean, not 0; null for none.</param>
    public ReplicateRow Row(int replicates, double? difference = null)
    {
        Checks.AtLeast(replicates, 2);
        var df = (Treatments - 1) * (replicates - 1);
        return new(
            replicates,
            df,
            TTestPower.NoncentralityFor(Power, df, AlphaOfOne(replicates)) * Error(replicates),
            difference is { } asked ? PowerAt(replicates, asked) : null,
            difference is { } furthest && Treatments > 2 ? BlockPower.Power(Treatments, replicates, furthest, Cv, Level.Alpha) : null,
            SmallestExactP(Treatments, replicates));
    }

    /// <summary>The rows from 2 replicates to a last one.</summary>
    /// <param name="last">2 or more.</param>
    /// <param name="difference">A difference to ask about; null for none.</param>
    public ImmutableArray<ReplicateRow> Rows(int last, double? difference = null) =>
        [.. Enumerable.Range(2, Math.Max(0, last - 1)).Select(replicates => Row(replicates, difference))];

    /// <summary>The chance to show a difference in its true direction.</summary>
    /// <param name="replicates">Pairs or blocks, 2 or more.</param>
    /// <param name="difference">In percent of the mean.</param>
    public double PowerAt(int replicates, double difference)
    {
        Checks.AtLeast(replicates, 2);
        Checks.Finite(difference);
        return TTestPower.Power(Math.Abs(difference) / Error(replicates), (Treatments - 1) * (replicates - 1), AlphaOfOne(replicates), Rejection.TrueDirection);
    }

    /// <summary>The fewest replicates that show a difference with the power asked; null when <see cref="Most"/> do not suffice.</summary>
    /// <param name="difference">In percent of the mean, not 0.</param>
    public int? Required(double difference)
    {
        Checks.Positive(Math.Abs(difference), nameof(difference));
        return FewestReplicates.Find(replicates => PowerAt(replicates, difference) >= Power, Most);
    }

    /// <summary>The two-sided level of one comparison by itself that keeps the level of all those with the control.</summary>
    private double AlphaOfOne(int replicates)
    {
        if (Treatments == 2)
        {
            return Level.Alpha;
        }

        if (!alphas.TryGetValue(replicates, out var alpha))
        {
            var df = (Treatments - 1) * (replicates - 1);
            int[] others = [.. Enumerable.Repeat(replicates, Treatments - 1)];
            alphas.Add(replicates, alpha = 2 * StudentT.UpperTail(Dunnett.CriticalValueTwoSided(Level.Alpha, replicates, others, df), df));
        }

        return alpha;
    }

    private double Error(int replicates) => Math.Sqrt(2) * Cv / Math.Sqrt(replicates);
}
