using System.Diagnostics.CodeAnalysis;

namespace TrialKit.Trials;

/// <summary>How names of strips, blocks, treatments and spots are compared: without regard to case and outer spaces.</summary>
public sealed class Identifier : IEqualityComparer<string>
{
    private Identifier()
    {
    }

    /// <summary>The one comparer.</summary>
    public static Identifier Comparer { get; } = new();

    /// <summary>Whether two names mean the same thing.</summary>
    public static bool Same(string? left, string? right) => Comparer.Equals(left, right);

    /// <inheritdoc/>
    public bool Equals(string? x, string? y) =>
        x is null || y is null
            ? x is null && y is null
            : x.AsSpan().Trim().Equals(y.AsSpan().Trim(), StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public int GetHashCode([DisallowNull] string obj) => string.GetHashCode(obj.AsSpan().Trim(), StringComparison.OrdinalIgnoreCase);
}
