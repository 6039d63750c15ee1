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

    /// <summary>What the level means and which tests stand behind the verdicts, once a page.</summary>
    public static string Level(TrialAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        var design = analysis.Trial.Design;
        var alpha = NumberText.Level(design.Level.Alpha);
        var judged = design.Layout == Trials.Layout.Pairs ? "comparisons" : "measures, all their comparisons together,";
        return $"Ranges are {design.Level} intervals. Shown means shown at the {alpha} level: with no true difference, {alpha} of such {judged} would show one by chance. Usually means four times in five; a smaller true difference can go unshown. {Judges(analysis)}";
    }

    /// <summary>What the levels of pooled results mean, once a page.</summary>
    public static string Level(PooledTrials pooled)
    {
        ArgumentNullException.ThrowIfNull(pooled);
        var most = pooled.Comparisons.Select(comparison => comparison.Comparisons).DefaultIfEmpty(1).Max();
        var together = most == 1 ? "" : $" The comparisons of one measure, up to {NumberText.Count(most)}, are judged together: their ranges and p are adjusted by Bonferroni's inequality.";
        return $"Ranges are {pooled.Level} intervals over sites as different as these: random effects by REML with the error of Hartung and Knapp, never below what the sites' errors and the variance between sites give. Shown means shown at the {NumberText.Level(pooled.Level.Alpha)} level.{together}";
    }

    // A measure that the control lacks is judged by another test than the others: each is named by what judged it.
    private static string Judges(TrialAnalysis analysis)
    {
        var judges = analysis.Measures
            .Where(measure => measure.Contrasts.Any(contrast => contrast.P is not null))
            .GroupBy(measure => measure.Contrasts.First(contrast => contrast.P is not null).JudgedBy)
            .OrderByDescending(group => group.Count())
            .ToArray();
        return judges.Length == 0
            ? "Nothing could be tested."
            : $"Judged by {Name(judges[0].Key)}{string.Concat(judges.Skip(1).Select(group => $"; {string.Join(", ", group.Select(measure => measure.Measure.Label))} by {Name(group.Key)}"))}.";

        string Name(Results.Method method) => analysis.Trial.Design.Layout == Trials.Layout.Pairs ? "the paired t test" : method.Name;
    }
}
