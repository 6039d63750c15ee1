using System.Collections.Immutable;

namespace TrialKit.Starter;

/// <summary>A publication that prints limits beside the seed.</summary>
/// <param name="Name">Who prints them, within a sentence.</param>
/// <param name="Title">Where they are printed.</param>
/// <param name="Year">The year it is of; null when the copy read does not say.</param>
/// <param name="Limits">Its limits.</param>
/// <param name="Note">What it says beside them.</param>
public sealed record LimitSource(string Name, string Title, int? Year, ImmutableArray<ScreeningLimit> Limits, string Note);
