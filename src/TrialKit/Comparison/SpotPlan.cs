namespace TrialKit.Comparison;

/// <summary>What a trial of so many strips and spots would know, with the variances that this one found.</summary>
/// <param name="StripsPerTreatment">Strips of each treatment: pairs or blocks.</param>
/// <param name="SpotsPerStrip">Spots in each strip.</param>
/// <param name="StandardError">Of the difference of two treatments, in the measure's unit.</param>
/// <param name="Detectable">The true difference that such a trial would show with a chance of 80 %, at the level that the adjustment for several treatments leaves one comparison.</param>
public sealed record SpotPlan(int StripsPerTreatment, int SpotsPerStrip, double StandardError, double Detectable);
