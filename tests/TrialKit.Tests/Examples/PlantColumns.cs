namespace TrialKit.Tests.Examples;

/// <summary>What an example's plants.csv holds besides position and date.</summary>
[Flags]
internal enum PlantColumns
{
    /// <summary>Nothing more.</summary>
    None = 0,

    /// <summary>Leaf collars.</summary>
    Collars = 1,

    /// <summary>Seed depth of each third plant.</summary>
    Depth = 2,

    /// <summary>Mesocotyl length of each third plant.</summary>
    Mesocotyl = 4,
}
