namespace TrialKit.Reporting.Document;

/// <summary>White space between two blocks, dropped at the head of a page.</summary>
/// <param name="Points">Its height in points, 0 or more.</param>
public sealed record Space(double Points) : Block
{
    /// <summary>Its height in points, 0 or more.</summary>
    public double Points { get; init; } = Points is >= 0 and < double.PositiveInfinity
        ? Points
        : throw new ArgumentOutOfRangeException(nameof(Points), Points, "A space has a height of 0 or more points.");
}
