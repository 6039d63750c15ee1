namespace TrialKit.Emergence;

/// <summary>A parameter of a fitted curve.</summary>
/// <param name="Value">The estimate.</param>
/// <param name="StandardError">From the inverse of the observed information; null when it was fixed or the information says nothing of it.</param>
/// <remarks>The error counts seeds as independent of each other; within a strip they are not, so strips, not these errors, judge treatments.</remarks>
public readonly record struct FittedParameter(double Value, double? StandardError);
