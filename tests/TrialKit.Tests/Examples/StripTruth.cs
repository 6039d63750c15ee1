namespace TrialKit.Tests.Examples;

/// <summary>One strip as it truly is: the treatment's truth with what block and strip add.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Block">Its block, from 1.</param>
/// <param name="Treatment">What was done to it.</param>
/// <param name="Order">Its place across the field, from 1.</param>
/// <param name="Planted">The day it was planted.</param>
/// <param name="Length">Its length, in long units.</param>
/// <param name="Share">Share of its seeds that come up.</param>
/// <param name="MedianDays">Days until half of these are up.</param>
/// <param name="Steepness">Steepness of its curve.</param>
/// <param name="Yield">Its yield at standard moisture.</param>
/// <param name="Moisture">Moisture of its grain, %.</param>
/// <param name="Depth">Its mean seed depth, in short units.</param>
/// <param name="LeftOut">Why it is left out; null when it is in.</param>
internal sealed record StripTruth(
    string Name,
    int Block,
    TreatmentTruth Treatment,
    int Order,
    DateOnly Planted,
    double Length,
    double Share,
    double MedianDays,
    double Steepness,
    double Yield,
    double Moisture,
    double Depth,
    string? LeftOut);
