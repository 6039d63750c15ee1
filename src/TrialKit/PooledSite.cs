using System.Collections.Immutable;
using TrialKit.Comparison.Sites;

namespace TrialKit;

/// <summary>One trial of several that are put together: no more of it than that takes.</summary>
/// <param name="Name">What it is called in results; unlike any other's.</param>
/// <param name="Trial">What tells it from others.</param>
/// <param name="Measures">Its measures, in the order of its analysis.</param>
public sealed record PooledSite(string Name, TrialIdentity Trial, ImmutableArray<SiteMeasure> Measures)
{
    /// <summary>The site of an analysed trial.</summary>
    /// <param name="name">What it is called in results.</param>
    /// <param name="analysis">Its outcome, which is not kept.</param>
    public static PooledSite Of(string name, TrialAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(analysis);
        return new(name, TrialIdentity.Of(analysis.Trial), [.. analysis.Measures.Select(SiteMeasure.Of)]);
    }
}
