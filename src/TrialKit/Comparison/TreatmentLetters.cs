using TrialKit.Trials;

namespace TrialKit.Comparison;

/// <summary>Letters of one treatment at the trial's level: two treatments that share no letter were shown to differ, two that share one were not.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Lsd">By the least significant difference.</param>
/// <param name="Protected">By the least significant difference after F.</param>
/// <param name="Tukey">By Tukey's test.</param>
/// <param name="Holm">By Holm's step-down.</param>
public sealed record TreatmentLetters(Treatment Treatment, string Lsd, string Protected, string Tukey, string Holm);
