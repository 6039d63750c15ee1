namespace TrialKit.Emergence;

/// <summary>A shape of curve that was tried.</summary>
/// <param name="Model">Its name.</param>
/// <param name="Aic">Akaike's criterion, 2 x parameters - 2 log L, summed over the strips that can tell shapes apart; null without such a strip.</param>
public readonly record struct CurveCandidate(string Model, double? Aic);
