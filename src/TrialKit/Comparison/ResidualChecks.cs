using System.Globalization;
using TrialKit.Numerics;
using TrialKit.Numerics.Linear;
using TrialKit.Numerics.Screening;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>Looks at what blocks and treatments leave: its shape, its spread by treatment, the strip furthest off, and whether blocks only shift the level.</summary>
/// <remarks>
/// Royston 1995 (Shapiro-Wilk), Brown and Forsythe 1974, Grubbs 1969, Tukey 1949. A finding asks for a look at the strip or at
/// another scale; nothing is ever taken out. Residuals of one fit hang together, so their p are guides, not tests to be quoted.
/// </remarks>
internal static class ResidualChecks
{
    /// <summary>The fewest values whose shape can be looked at.</summary>
    public const int Fewest = 6;

    /// <summary>The level of every check.</summary>
    public const double Level = 0.05;

    private const int FewestOfATreatment = 3;

    /// <summary>The findings of a comparison in blocks that has an error.</summary>
    public static IEnumerable<Finding> Of(Measure measure, BlockAnova anova, JoinedStrips strips)
    {
        if (anova.Error.Status != FStatus.Defined)
        {
            yield break;
        }

        // Two treatments in whole blocks leave the same residual twice, once with either sign.
        var kept = Enumerable.Range(0, strips.Entries.Length)
            .Where(index => strips.Treatments.Length > 2 || !anova.Design.IsComplete || strips.TreatmentIndex(strips.Entries[index].Strip) == 0)
            .ToArray();
        double[] residuals = [.. kept.Select(index => anova.Residuals[index])];
        if (residuals.Length < Fewest || anova.Error.DegreesOfFreedom < 2)
        {
            yield return TooFew(measure, residuals.Length, residuals.Length < strips.Entries.Length ? "blocks of two strips" : "strips");
            yield break;
        }

        var shape = ShapiroWilk.Test(residuals);
        if (shape.P < Level)
        {
            yield return Shape(measure, shape, "residuals");
        }

        var furthest = Grubbs.Test(residuals);
        if (furthest.P < Level)
        {
            yield return Outlier(measure, $"strip {strips.Entries[kept[furthest.Index]].Strip}", furthest);
        }

        foreach (var finding in Spreads(measure, anova, strips).Concat(Additivity(measure, anova)))
        {
            yield return finding;
        }
    }

    /// <summary>That there is too little to look at.</summary>
    public static Finding TooFew(Measure measure, int count, string what) => new(
        "shape-not-checked",
        FindingWeight.Note,
        Text($"{measure.Label}: with {count} {what} no test can tell a bell shape or an odd one out; look at the values."),
        measure.Id);

    /// <summary>That a shape is far from the bell.</summary>
    public static Finding Shape(Measure measure, ShapiroWilkResult shape, string what) => new(
        "not-bell-shaped",
        FindingWeight.Caution,
        Text($"{measure.Label}: the {what} are not bell-shaped (Shapiro-Wilk W {shape.W:0.000}, p {shape.P:0.0000}); look at the randomisation test beside the t."),
        measure.Id);

    /// <summary>That one value stands far from the others.</summary>
    public static Finding Outlier(Measure measure, string which, GrubbsResult furthest) => new(
        "odd-one-out",
        FindingWeight.Caution,
        Text($"{measure.Label}: {which} stands far from the others (Grubbs G {furthest.G:0.00}, p {furthest.P:0.0000}). It was kept: look for a reason in the field, not in the number."),
        measure.Id);

    private static IEnumerable<Finding> Spreads(Measure measure, BlockAnova anova, JoinedStrips strips)
    {
        if (strips.Treatments.Length < 3)
        {
            yield break;
        }

        double[][] groups = [.. strips.Treatments.Select((_, treatment) => Enumerable.Range(0, strips.Entries.Length)
            .Where(index => strips.TreatmentIndex(strips.Entries[index].Strip) == treatment)
            .Select(index => anova.Residuals[index])
            .ToArray())];
        if (groups.Any(group => group.Length < FewestOfATreatment) || !DistancesVary(groups))
        {
            yield break;
        }

        var test = BrownForsythe.Test(groups);
        if (test.P < Level)
        {
            yield return new("spread-by-treatment", FindingWeight.Caution, Text($"{measure.Label}: strips of some treatments vary more than those of others (Brown-Forsythe F {test.F:0.00}, p {test.P:0.0000}); one error for all is then too small for some comparisons and too large for others."), measure.Id);
        }
    }

    // Residuals that lie alike around each median, as few and round values may, leave the test no error.
    private static bool DistancesVary(double[][] groups)
    {
        double[][] distances = [.. groups.Select(group => group.Select(value => Math.Abs(value - Summary.Median(group))).ToArray())];
        return distances.Any(group => group.Max() - group.Min() > Ties.Relative * distances.Max(other => other.Max()));
    }

    private static IEnumerable<Finding> Additivity(Measure measure, BlockAnova anova)
    {
        if (NonAdditivity.Of(anova) is { P: { } p } test && p < Level)
        {
            yield return new("blocks-not-additive", FindingWeight.Caution, Text($"{measure.Label}: treatments differ more in some blocks than in others, in step with the level of the block (Tukey's one degree of freedom, F {test.F:0.00}, p {p:0.0000}); the mean difference then hides where it holds."), measure.Id);
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
