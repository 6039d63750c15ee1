using TrialKit.Reporting.Fonts;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>What of a trial's words cannot be printed as it was written.</summary>
public static class PrintFindings
{
    /// <summary>A finding that names the letters the bundled font lacks; nothing where it has them all.</summary>
    /// <param name="analysis">The outcome whose titles and names are printed.</param>
    public static IEnumerable<Finding> Of(TrialAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        var missing = PrintableText.Missing(Texts(analysis.Trial).OfType<string>());
        if (missing.Count > 0)
        {
            yield return new(
                "letters-not-printed",
                FindingWeight.Note,
                $"The report's font lacks {missing.Count} of the letters in titles and names ({string.Join(" ", missing.Select(letter => FormattableString.Invariant($"U+{char.ConvertToUtf32(letter, 0):X4}")))}); {PrintableText.Replacement} stands in their place. Names with other letters print whole.");
        }
    }

    private static IEnumerable<string?> Texts(StripTrial trial) =>
    [
        trial.Title,
        trial.Question,
        trial.Site?.Name,
        .. trial.Treatments.Select(treatment => treatment.Label),
        .. trial.Strips.SelectMany(strip => new[] { strip.Name, strip.Block, strip.LeftOut }),
        .. trial.Measurements.Select(value => value.Measure).Distinct(StringComparer.Ordinal),
    ];
}
