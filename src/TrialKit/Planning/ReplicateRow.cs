namespace TrialKit.Planning;

/// <summary>What so many pairs or blocks can show.</summary>
/// <param name="Replicates">Pairs or blocks.</param>
/// <param name="DegreesOfFreedom">Of the error: (treatments - 1)(replicates - 1).</param>
/// <param name="Detectable">The difference between two treatments that is shown with the power asked, in percent of the mean.</param>
/// <param name="Power">The chance to show the difference asked about, in its true direction; null when none was asked about.</param>
/// <param name="FPower">The chance that the F test of all treatments finds that difference between the two furthest apart, the others midway; null with two treatments, or without a difference.</param>
/// <param name="SmallestExactP">The smallest p that the exact test can give.</param>
public sealed record ReplicateRow(int Replicates, int DegreesOfFreedom, double Detectable, double? Power, double? FPower, double SmallestExactP);
