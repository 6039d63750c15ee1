using System.Globalization;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>What to doubt about what is put near the seed.</summary>
internal static class StarterFindings
{
    public static IEnumerable<Finding> Of(IReadOnlyCollection<TreatmentStarter> treatments)
    {
        foreach (var treatment in treatments)
        {
            foreach (var (product, hazard) in treatment.Hazards)
            {
                yield return hazard.IsNever
                    ? new("never-in-furrow", FindingWeight.Serious, $"{treatment.Treatment.Label} puts {product.Name} into the seed furrow, and {hazard.What} is never to be there: {hazard.Reason} ({hazard.Source}). {StarterCautions.LabelFirst}", treatment.Treatment.Name)
                    : new("furrow-wary", FindingWeight.Caution, $"{treatment.Treatment.Label} puts {product.Name} into the seed furrow: {hazard.What} {hazard.Reason} ({hazard.Source}). {StarterCautions.LabelFirst}", treatment.Treatment.Name);
            }

            foreach (var line in treatment.Screen.Where(line => line.Verdict == ScreenVerdict.Over))
            {
                yield return new("starter-over-limit", FindingWeight.Caution, Text($"{treatment.Treatment.Label} puts {line.PoundsPerAcre:0.0} lb/ac of {line.Limit!.SumWords} {Placements.WordsOf(line.Placement)}, over the {line.Limit.PoundsPerAcre:0.0} of {line.Source.Name}: a screening figure, no proof of injury. {StarterCautions.LabelFirst}"), treatment.Treatment.Name);
            }
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

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
