using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Planning;

/// <summary>A strip with its place in the field.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Left">Distance of its left edge from the corner, across the rows.</param>
/// <param name="Width">Its width.</param>
/// <param name="FirstPass">Its first planter pass, counted from 1 at the corner.</param>
/// <param name="LastPass">Its last pass.</param>
/// <param name="Half">The half of the planter that sows it; null when a whole pass does.</param>
public sealed record PlannedStrip(Strip Strip, Length Left, Length Width, int FirstPass, int LastPass, PlanterSide? Half);
