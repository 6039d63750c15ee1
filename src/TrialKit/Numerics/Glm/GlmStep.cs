namespace TrialKit.Numerics.Glm;

/// <summary>One state of the iteration.</summary>
/// <param name="Coefficients">One per column.</param>
/// <param name="Linear">Linear predictor of each observation, without its exposure.</param>
/// <param name="Expected">Expected count of each observation.</param>
/// <param name="Deviance">Deviance.</param>
internal sealed record GlmStep(double[] Coefficients, double[] Linear, double[] Expected, double Deviance);
