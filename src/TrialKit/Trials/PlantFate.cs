namespace TrialKit.Trials;

/// <summary>What a note says of a plant.</summary>
public enum PlantFate
{
    /// <summary>Nothing special.</summary>
    Ordinary,

    /// <summary>Two seeds were dropped at one place (<c>double</c>): the plant is one of the two.</summary>
    Double,

    /// <summary>It did not grow from the seed sown (<c>volunteer</c>): it is listed and takes part in nothing.</summary>
    Volunteer,

    /// <summary>It came up and died (<c>died</c>): it counts for emergence and not for spacing.</summary>
    Died,
}
