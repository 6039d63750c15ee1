using UnitsNet;

namespace TrialKit.Trials;

/// <summary>One plant looked at by itself.</summary>
/// <param name="Strip">Where.</param>
/// <param name="Spot">The spot within the strip.</param>
/// <param name="Name">The plant's number or name within the spot.</param>
/// <param name="Position">Its place on the tape from the spot's zero; null when not recorded.</param>
/// <param name="FirstSeen">When it was first seen; null when not recorded.</param>
/// <param name="Collars">Leaf collars counted; null when not recorded.</param>
/// <param name="Depth">Depth of its seed; null when not recorded.</param>
/// <param name="Mesocotyl">Length of its mesocotyl, seed to crown; null when not recorded.</param>
/// <param name="Fate">What kind of plant it is.</param>
/// <param name="Note">Whatever was noted.</param>
public sealed record Plant(
    Strip Strip,
    string Spot,
    string Name,
    Length? Position,
    DateTime? FirstSeen,
    int? Collars,
    Length? Depth,
    Length? Mesocotyl,
    PlantFate Fate,
    string? Note);
