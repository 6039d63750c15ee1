using System.Runtime.InteropServices;

namespace TrialKit.Reporting.Pdf;

/// <summary>A place on a page, in points from its upper left corner.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Width">Width, 0 or more.</param>
/// <param name="Height">Height, 0 or more.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>Right edge.</summary>
    public double Right => X + Width;

    /// <summary>Lower edge.</summary>
    public double Bottom => Y + Height;

    /// <summary>The place moved.</summary>
    public Box Move(double dx, double dy) => this with { X = X + dx, Y = Y + dy };

    /// <summary>Whether two places share more than an edge.</summary>
    public bool Overlaps(Box other) =>
        X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;
}
