namespace TrialKit.Tests.Examples;

/// <summary>What a treatment of an example trial truly does, before block and strip add their own.</summary>
/// <param name="Name">The name that the tables use.</param>
/// <param name="Share">Share of sown seeds that ever come up.</param>
/// <param name="MedianDays">Days from the planting day's first midnight until half of these are up.</param>
/// <param name="Steepness">Steepness b of the log-logistic curve; larger is more even.</param>
/// <param name="Yield">Yield at standard moisture, in the example's yield unit.</param>
internal sealed record TreatmentTruth(string Name, double Share, double MedianDays, double Steepness, double Yield)
{
    /// <summary>Days from 10 % to 90 % of the plants that come up: e (9^(1/b) - 9^(-1/b)).</summary>
    public double SpreadDays => MedianDays * (Math.Pow(9, 1 / Steepness) - Math.Pow(9, -1 / Steepness));
}
