using SkiaSharp;

namespace TrialKit.Reporting.Figures;

/// <summary>A picture of results: drawn from plain numbers, with nothing computed but places on the paper.</summary>
public interface IFigure
{
    /// <summary>What the figure shows, in words that give the result.</summary>
    string AltText { get; }

    /// <summary>Height over width at which the figure is at its best.</summary>
    double Aspect { get; }

    /// <summary>The height at which the figure is at its best when it is so wide, both in points.</summary>
    double HeightAt(double width) => width * Aspect;

    /// <summary>Draws the figure.</summary>
    /// <param name="canvas">Where to draw; one unit is a point.</param>
    /// <param name="area">The room it has, in points.</param>
    void Draw(SKCanvas canvas, SKRect area);
}
