namespace TrialKit.Tests.Examples;

/// <summary>One seed and what became of it.</summary>
/// <param name="Position">Where it lies along the row, in short units.</param>
/// <param name="IsDouble">Whether it lies beside the seed before it.</param>
/// <param name="UpAt">Days after planting at which it comes up; infinite when never.</param>
/// <param name="DeadAt">Days after planting at which it dies; infinite when it lives.</param>
/// <param name="Depth">How deep it lies, in short units.</param>
internal readonly record struct SownSeed(double Position, bool IsDouble, double UpAt, double DeadAt, double Depth)
{
    /// <summary>Whether its plant stands at a moment, in days after planting.</summary>
    public bool StandsAt(double days) => UpAt <= days && days < DeadAt;
}
