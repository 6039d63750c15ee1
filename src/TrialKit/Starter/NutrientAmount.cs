using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Starter;

/// <summary>How much of a nutrient lies at one placement.</summary>
/// <param name="Nutrient">Which.</param>
/// <param name="Rate">Per area, as a weight.</param>
/// <param name="Row">Per length of row, as a weight.</param>
public sealed record NutrientAmount(Nutrient Nutrient, ApplicationRate Rate, RowAmount Row);
