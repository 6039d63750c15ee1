using System.Collections.Immutable;

namespace TrialKit.Trials;

/// <summary>The placements by the names that files, options and reports use.</summary>
public static class Placements
{
    private static readonly (Placement Placement, string Name, string Words)[] Table =
    [
        (Placement.InFurrow, "in-furrow", "in the seed furrow"),
        (Placement.BesideAndBelow, "2x2", "2x2 band, 2 in beside and 2 in below"),
        (Placement.BesideOnSurface, "2x0", "2x0 surface band beside the row"),
        (Placement.BesideAndBelowBothSides, "2x2x2", "2x2x2 bands on both sides"),
        (Placement.SurfaceDribble, "dribble", "surface dribble"),
    ];

    /// <summary>The names.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Table.Select(row => row.Name)];

    /// <summary>The placement of a name, without regard to case; null when there is none.</summary>
    public static Placement? Find(string name) => Table.Where(row => Identifier.Same(row.Name, name)).Select(row => (Placement?)row.Placement).FirstOrDefault();

    /// <summary>The name of a placement.</summary>
    public static string NameOf(Placement placement) => Row(placement).Name;

    /// <summary>A placement in words.</summary>
    public static string WordsOf(Placement placement) => Row(placement).Words;

    /// <summary>Streams or bands a row has: two where both sides get one.</summary>
    public static int OutletsPerRow(Placement placement) => placement == Placement.BesideAndBelowBothSides ? 2 : 1;

    private static (Placement Placement, string Name, string Words) Row(Placement placement) => Table.First(row => row.Placement == placement);
}
