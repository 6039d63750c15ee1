using System.Collections.Immutable;

namespace TrialKit.Starter;

/// <summary>A publication that prints limits beside the seed.</summary>
/// <param name="Name">Who prints them, and where.</param>
/// <param name="Year">The year it is of; null when the copy read does not say.</param>
/// <param name="Limits">Its limits.</param>
/// <param name="Note">What it says beside them.</param>
public sealed record LimitSource(string Name, int? Year, ImmutableArray<ScreeningLimit> Limits, string Note);
