using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;

namespace TrialKit.Money;

/// <summary>Why a figure of money is not there, and what to doubt about those that are.</summary>
internal static class BudgetFindings
{
    public static IEnumerable<Finding> Of(Treatment treatment, Treatment baseline, IReadOnlyCollection<CostLine> costs, IReadOnlyCollection<CostLine> baselineCosts, YieldResponse? response, GrainPrice? price)
    {
        var pair = $"{treatment.Label} against {baseline.Label}";
        if (price is null)
        {
            yield return new("money-no-price", FindingWeight.Note, "Costs are stated and no price of grain, so neither the break-even response nor a worth can be given; add grain_price under [money].");
            yield break;
        }

        if (costs.Count + baselineCosts.Count == 0)
        {
            yield return new("money-no-cost", FindingWeight.Caution, $"{pair}: no cost is stated, so the worth is that of the grain alone.", treatment.Label);
        }

        foreach (var product in treatment.Products.Concat(baseline.Products).Where(product => product.Price is null).Select(product => product.Name).Distinct(Identifier.Comparer))
        {
            yield return new("money-product-without-price", FindingWeight.Note, $"{pair}: {product} has no price and is in the budget only as far as a stated cost holds it.", treatment.Label);
        }

        if (response is null)
        {
            yield return new("money-no-yield", FindingWeight.Note, $"{pair}: no yield difference is on record, so there is no figure of money but the break-even response. A difference of stand or timing is not turned into money by a guess.", treatment.Label);
        }
        else if (response.StandardError is null)
        {
            yield return new("money-one-replicate", FindingWeight.Serious, $"{pair}: the yield difference has no measure of its spread, so no chance that it pays can be given.", treatment.Label);
        }
        else if (response.StandardError == 0)
        {
            yield return new("money-no-spread", FindingWeight.Serious, $"{pair}: every pair gave the same yield difference, so the chance that it pays is printed as 0 or 1; check the data.", treatment.Label);
        }
    }
}
