namespace TrialKit.Reporting.Figures;

/// <summary>One of the pictures of a <see cref="PanelsFigure"/>.</summary>
/// <param name="Title">What it shows, above it.</param>
/// <param name="Figure">The picture.</param>
/// <param name="Share">Its part of the width, above zero, in proportion to the other panels'.</param>
public sealed record FigurePanel(string Title, IFigure Figure, double Share = 1)
{
    /// <summary>Its part of the width, above zero, in proportion to the other panels'.</summary>
    public double Share { get; init; } = Share > 0 && double.IsFinite(Share)
        ? Share
        : throw new ArgumentOutOfRangeException(nameof(Share), Share, "A panel has a share of the width above zero.");
}
