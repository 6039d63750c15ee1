using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>The procedures of this folder with their sources.</summary>
internal static class Methods
{
    public static Method PairedT { get; } = new("Paired t", "Student 1908, Biometrika 6:1-25", "docs/methods/paired-strips.md");

    public static Method SignFlips { get; } =
        new("Randomisation test within pairs (sign flips)", "Fisher 1935, The Design of Experiments, ch. 3", "docs/methods/paired-strips.md");

    public static Method SignedRank { get; } = new("Signed-rank test", "Wilcoxon 1945, Biometrics Bull. 1:80-83", "docs/methods/paired-strips.md");

    public static Method BlockAnova { get; } =
        new("Analysis of variance in complete blocks", "Fisher 1935, The Design of Experiments, ch. 4", "docs/methods/block-anova.md");

    public static Method Dunnett { get; } =
        new("Dunnett's test against the control", "Dunnett 1955, J. Am. Stat. Assoc. 50:1096-1121", "docs/methods/block-anova.md");

    public static Method Tukey { get; } =
        new("Tukey's test of all pairs", "Tukey 1953; Kramer 1956, Biometrics 12:307-310", "docs/methods/block-anova.md");
}
