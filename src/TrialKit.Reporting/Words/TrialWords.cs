using System.Globalization;
using TrialKit.Reporting.Document;
using TrialKit.Trials;

namespace TrialKit.Reporting.Words;

/// <summary>How a trial's plan is spoken of.</summary>
public static class TrialWords
{
    /// <summary>What a replicate is called: <c>pairs</c> or <c>blocks</c>.</summary>
    public static string Replicates(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return trial.Design.Layout == Trials.Layout.Pairs ? "pairs" : "blocks";
    }

    /// <summary>The layout in a few words: <c>6 pairs of strips</c>.</summary>
    public static string Layout(StripTrial trial) => Layout(TrialIdentity.Of(trial));

    /// <summary>The layout in a few words: <c>6 pairs of strips</c>.</summary>
    public static string Layout(TrialIdentity trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var (blocks, leftOut) = (trial.Blocks, trial.LeftOut);
        var layout = trial.Layout == Trials.Layout.Pairs
            ? string.Create(CultureInfo.InvariantCulture, $"{blocks} {(blocks == 1 ? "pair" : "pairs")} of strips")
            : string.Create(CultureInfo.InvariantCulture, $"{blocks} {(blocks == 1 ? "block" : "blocks")} of {trial.Treatments} treatments");
        return leftOut == 0 ? layout : string.Create(CultureInfo.InvariantCulture, $"{layout}, {leftOut} {(leftOut == 1 ? "strip" : "strips")} left out");
    }

    /// <summary>What the level means, once a page.</summary>
    public static string Level(Design design)
    {
        ArgumentNullException.ThrowIfNull(design);
        var alpha = NumberText.Level(design.Level.Alpha);
        var judged = design.Layout == Trials.Layout.Pairs ? "comparisons" : "measures, all their comparisons together,";
        return $"Ranges are {design.Level} intervals. Shown means shown at the {alpha} level: with no true difference, {alpha} of such {judged} would show one by chance. Usually means four times in five; a smaller true difference can go unshown. Judged by {Judge(design)}.";
    }

    /// <summary>What the levels of pooled results mean, once a page.</summary>
    public static string Level(PooledTrials pooled)
    {
        ArgumentNullException.ThrowIfNull(pooled);
        return $"Ranges are {pooled.Level} intervals over sites as different as these: random effects by REML with the error of Hartung and Knapp, never below what the sites' own errors give. Shown means shown at the {NumberText.Level(pooled.Level.Alpha)} level.";
    }

    private static string Judge(Design design) =>
        design.Layout == Trials.Layout.Pairs ? "the paired t test"
        : design.Control is null ? "Tukey's test of all pairs of treatments"
        : "Dunnett's test of each treatment against the control";
}
