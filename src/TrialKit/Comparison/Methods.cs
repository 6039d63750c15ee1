using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>The procedures of this folder with their sources.</summary>
internal static class Methods
{
    public static Method PairedT { get; } = new("Paired t", "Student 1908, Biometrika 6:1-25", "docs/methods/paired-t.md");

    public static Method SignFlips { get; } =
        new("Randomisation test within pairs (sign flips)", "Fisher 1935, The Design of Experiments, ch. 3", "docs/methods/sign-flips.md");

    public static Method SignedRank { get; } = new("Signed-rank test", "Wilcoxon 1945, Biometrics Bull. 1:80-83", "docs/methods/signed-rank.md");

    public static Method SignedRankPratt { get; } =
        new("signed-rank test, zeros ranked (Pratt)", "Pratt 1959, J. Am. Stat. Assoc. 54:655-667", "docs/methods/signed-rank.md");

    public static Method MixedPairs { get; } =
        new("mixed model of all strips of pairs, REML, Satterthwaite df", "Patterson and Thompson 1971, Biometrika 58:545-554; Giesbrecht and Burns 1985, Biometrics 41:477-486", "docs/methods/lost-strips.md");

    public static Method SignTest { get; } = new("sign test", "Arbuthnott 1710, Phil. Trans. 27:186-190; Conover 1999, section 3.4", "docs/methods/sign-test.md");

    public static Method HodgesLehmann { get; } =
        new("Hodges-Lehmann estimate", "Hodges and Lehmann 1963, Ann. Math. Stat. 34:598-611", "docs/methods/median-shift.md");

    public static Method Equivalence { get; } =
        new("two one-sided tests of equivalence", "Schuirmann 1987, J. Pharmacokin. Biopharm. 15:657-680", "docs/methods/equivalence.md");

    public static Method BlockAnova { get; } =
        new("Analysis of variance in complete blocks", "Fisher 1935, The Design of Experiments, ch. 4", "docs/methods/block-anova.md");

    public static Method Dunnett { get; } =
        new("Dunnett's test against the control", "Dunnett 1955, J. Am. Stat. Assoc. 50:1096-1121", "docs/methods/dunnett.md");

    public static Method Tukey { get; } =
        new("Tukey's test of all pairs", "Tukey 1953; Kramer 1956, Biometrics 12:307-310", "docs/methods/tukey.md");

    public static Method BlockRandomization { get; } =
        new("randomisation test within blocks", "Fisher 1935, The Design of Experiments, ch. 3", "docs/methods/block-randomization.md");

    public static Method Friedman { get; } = new("Friedman's test", "Friedman 1937, J. Am. Stat. Assoc. 32:675-701", "docs/methods/friedman.md");

    public static Method NonAdditivity { get; } =
        new("Tukey's one degree of freedom for non-additivity", "Tukey 1949, Biometrics 5:232-242", "docs/methods/non-additivity.md");

    public static Method Subsampling { get; } =
        new("variance between strips and between spots", "Snedecor and Cochran 1967, Statistical Methods, ch. 10", "docs/methods/spots-and-strips.md");

    public static Method QuasiBinomial { get; } =
        new("quasi-binomial model on the logit", "McCullagh and Nelder 1989, Generalized Linear Models, ch. 4; Wedderburn 1974, Biometrika 61:439-447", "docs/methods/shares-and-counts.md");

    public static Method QuasiPoisson { get; } =
        new("quasi-Poisson model on the logarithm", "McCullagh and Nelder 1989, Generalized Linear Models, ch. 6; Wedderburn 1974, Biometrika 61:439-447", "docs/methods/shares-and-counts.md");

    public static Method CommonEffect { get; } = new("common effect of sites", "Cochran 1954, Biometrics 10:101-129", "docs/methods/several-sites.md");

    public static Method DerSimonianLaird { get; } =
        new("random effects by moments, Hartung-Knapp error", "DerSimonian and Laird 1986, Control. Clin. Trials 7:177-188; Hartung and Knapp 2001, Stat. Med. 20:3875-3889", "docs/methods/several-sites.md");

    public static Method RemlSites { get; } =
        new("random effects by REML, Hartung-Knapp error", "Hartung and Knapp 2001, Stat. Med. 20:3875-3889; Rover, Knapp and Friede 2015, BMC Med. Res. Methodol. 15:99", "docs/methods/several-sites.md");

    public static Method MixedSites { get; } =
        new("mixed model of all strips, REML, Satterthwaite df", "Patterson and Thompson 1971, Biometrika 58:545-554; Giesbrecht and Burns 1985, Biometrics 41:477-486", "docs/methods/several-sites.md");
}
