using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>What to doubt about what is put near the seed.</summary>
internal static class StarterFindings
{
    /// <summary>The findings; the caution leads each, since a page that is short of room shortens from the end.</summary>
    public static IEnumerable<Finding> Of(IReadOnlyCollection<TreatmentStarter> treatments)
    {
        foreach (var kind in treatments.SelectMany(treatment => treatment.Hazards.Select(entry => (treatment.Treatment, entry.Product, entry.Hazard))).GroupBy(entry => entry.Hazard.IsNever).OrderByDescending(kind => kind.Key))
        {
            var list = Join(kind.Select(entry => $"{entry.Treatment.Label} with {entry.Product.Name} ({entry.Hazard.What}: {entry.Hazard.Reason}; {entry.Hazard.Source})"));
            yield return kind.Key
                ? new("never-in-furrow", FindingWeight.Serious, $"{StarterCautions.LabelFirst} In the seed furrow lies what is never to be there: {list}.")
                : new("furrow-wary", FindingWeight.Caution, $"{StarterCautions.LabelFirst} In the seed furrow lies what sources warn of: {list}.");
        }

        string[] over = [.. treatments.SelectMany(treatment => treatment.Screen
            .Where(line => line.Verdict == ScreenVerdict.Over)
            .GroupBy(line => line.Placement)
            .Select(lines => $"{treatment.Treatment.Label}, {Placements.WordsOf(lines.Key)} ({string.Join(", ", lines.Select(line => line.Source.Name))})"))];
        if (over.Length > 0)
        {
            yield return new("starter-over-limit", FindingWeight.Caution, $"{StarterCautions.LabelFirst} Over a published limit, which is a screening figure and no proof of injury: {Join(over)}.");
        }

        string[] asked = [.. treatments.SelectMany(treatment => treatment.Screen).Where(line => line.Verdict == ScreenVerdict.SoilNotKnown).Select(line => line.Reason).Distinct(StringComparer.Ordinal)];
        if (asked.Length > 0)
        {
            yield return new("starter-soil-not-known", FindingWeight.Caution, $"Limits that depend on the soil were not applied, since it is never assumed: give {string.Join(", and ", asked)}.");
        }

        if (treatments.Any(treatment => treatment.Screen.Any(line => line.Verdict == ScreenVerdict.AmountNotKnown)))
        {
            yield return new("starter-amount-not-known", FindingWeight.Caution, "A product near the seed has no analysis, or no density to weigh it, so its nutrients were not held against any limit.");
        }
    }

    private static string Join(IEnumerable<string> items) => string.Join("; ", items);
}
