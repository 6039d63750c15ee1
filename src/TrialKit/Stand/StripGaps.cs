using System.Collections.Immutable;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Stand;

/// <summary>The gaps between neighbouring plants of one strip, its spots together.</summary>
/// <param name="Strip">The strip.</param>
/// <param name="Gaps">The gaps, the narrowest first; empty with fewer than two plants at every spot.</param>
public sealed record StripGaps(Strip Strip, ImmutableArray<Length> Gaps);
