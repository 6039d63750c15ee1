using TrialKit.Results;

namespace TrialKit.Comparison.Sites;

/// <summary>The mean difference over sites by one way of weighing them.</summary>
/// <param name="Estimate">The mean with its error; an infinite number of degrees of freedom stands for the normal distribution.</param>
/// <param name="BetweenVariance">Variance of the true difference between sites, in the square of the unit; 0 by assumption for a common effect.</param>
/// <param name="ErrorWasRaised">Whether the estimates scattered less around their mean than their weights let expect, so that the error was raised to that of the weights; beside a variance between sites this is no sign that sites agree.</param>
/// <param name="Prediction">Where the true difference of another site like these would lie; null for a common effect.</param>
public sealed record PooledEstimate(TEstimate Estimate, double BetweenVariance, bool ErrorWasRaised, Interval? Prediction);
